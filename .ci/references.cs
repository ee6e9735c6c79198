#:property PublishAot=false
#:property ManagePackageVersionsCentrally=false
// Prints the assemblies that each given file refers to; fails when one of them is a compiler.
using System;
using System.IO;
using System.Linq;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

bool clean = true;
foreach (string file in args)
{
    using FileStream stream = File.OpenRead(file);
    using PEReader reader = new(stream);
    if (!reader.HasMetadata)
    {
        continue;
    }

    MetadataReader metadata = reader.GetMetadataReader();
    string[] references = [.. metadata.AssemblyReferences.Select(handle => metadata.GetString(metadata.GetAssemblyReference(handle).Name))];
    if (references.Any(name => name.StartsWith("Microsoft.CodeAnalysis", StringComparison.Ordinal)))
    {
        Console.Error.WriteLine(Path.GetFileName(file) + " refers to a compiler.");
        clean = false;
    }
}

Console.WriteLine("assembly references read: " + args.Length + " files");
return clean ? 0 : 1;
