#:property PublishAot=false
#:property ManagePackageVersionsCentrally=false
// Which folders an assembly or its symbols name: every document has to lie under /_/ and nothing may name the folder given first.
// Usage: dotnet run paths.cs -- FOLDER FILE…
using System;
using System.IO;
using System.Linq;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text;

string folder = args[0];
int documents = 0;
bool clean = true;
foreach (string file in args[1..])
{
    byte[] bytes = File.ReadAllBytes(file);
    foreach (Encoding encoding in (Encoding[])[Encoding.UTF8, Encoding.Unicode])
    {
        if (bytes.AsSpan().IndexOf(encoding.GetBytes(folder)) >= 0)
        {
            Complain("names " + folder);
        }
    }

    if (file.EndsWith(".pdb", StringComparison.Ordinal))
    {
        // The names lie in pieces there, so a search for the folder alone would find nothing.
        using MetadataReaderProvider provider = MetadataReaderProvider.FromPortablePdbStream(new MemoryStream(bytes));
        MetadataReader reader = provider.GetMetadataReader();
        foreach (string name in reader.Documents.Select(handle => reader.GetString(reader.GetDocument(handle).Name)))
        {
            documents++;
            if (!name.StartsWith("/_/", StringComparison.Ordinal))
            {
                Complain("names " + name);
            }
        }
    }
    else
    {
        using PEReader reader = new(new MemoryStream(bytes));
        foreach (DebugDirectoryEntry entry in reader.ReadDebugDirectory().Where(entry => entry.Type == DebugDirectoryEntryType.CodeView))
        {
            string symbols = reader.ReadCodeViewDebugDirectoryData(entry).Path;
            if (Path.IsPathRooted(symbols) && !symbols.StartsWith("/_/", StringComparison.Ordinal))
            {
                Complain("names its symbols " + symbols);
            }
        }
    }

    void Complain(string fault)
    {
        clean = false;
        Console.Error.WriteLine(file + " " + fault);
    }
}

Console.WriteLine("paths: " + (args.Length - 1) + " files, " + documents + " documents" + (clean ? ", all under /_/" : string.Empty));
return clean && documents > 0 ? 0 : 1;
