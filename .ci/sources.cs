#:property PublishAot=false
#:property ManagePackageVersionsCentrally=false
#:package Microsoft.CodeAnalysis.CSharp@5.0.0
// Writes the generated part of docs/sources.md, docs/safety.md and docs/evidence.md: what stands above the line that says so is kept, the tables below it
// are made anew. Sources: every call of a factory of Refinish.Source in src, found by the compiler's own reading of the code, with the
// texts that reach it (constants, either side of a choice, arguments of the methods around it) and the public types in whose results it
// shows. Cautions: every construction of a Refinish.Caution. Evidence: every [Evidence] of the tests. Usage: dotnet run sources.cs -- REPOSITORY ASSEMBLIES_FOLDER OUT_FOLDER
using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

string repository = args[0];
const string Marker = "<!-- Generated below this line by .ci/sources.cs; .ci/check-docs holds it current. -->";
string[] symbols = ["NET", "NET8_0_OR_GREATER", "NET9_0_OR_GREATER", "NET10_0_OR_GREATER", "NET10_0", "RELEASE"];
CSharpParseOptions parsing = new(LanguageVersion.Preview, preprocessorSymbols: symbols);
SyntaxTree[] Parse(string folder) => [.. Directory.EnumerateFiles(Path.Combine(repository, folder), "*.cs", SearchOption.AllDirectories)
    .Where(file => !Regex.IsMatch(file, @"[/\\](obj|bin)[/\\]")).Order(StringComparer.Ordinal)
    .Select(file => CSharpSyntaxTree.ParseText(File.ReadAllText(file), parsing, file))];

// The JSON companion states no source of its own; it reads those of a document.
SyntaxTree[] trees = [.. Parse("src/Refinish.Core"), .. Parse("src/Refinish.Core.Pictures")];
string platform = (string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!;
CSharpCompilation compilation = CSharpCompilation.Create(
    "Sources",
    trees,
    platform.Split(Path.PathSeparator).Where(file => !Path.GetFileName(file).StartsWith("Microsoft.CodeAnalysis", StringComparison.Ordinal))
        .Concat(Directory.EnumerateFiles(args[1], "*.dll").Where(file => !Path.GetFileName(file).StartsWith("Refinish", StringComparison.Ordinal)))
        .Select(file => MetadataReference.CreateFromFile(file)),
    new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable));
Dictionary<SyntaxTree, SemanticModel> models = trees.ToDictionary(tree => tree, tree => compilation.GetSemanticModel(tree));
INamedTypeSymbol sourceType = compilation.GetTypeByMetadataName("Refinish.Source") ?? throw new InvalidOperationException("no Refinish.Source");

SemanticModel Model(SyntaxNode node) => models[node.SyntaxTree];

// Who refers to whom, member by member, and who calls which method with what.
Dictionary<ISymbol, HashSet<ISymbol>> users = new(SymbolEqualityComparer.Default);
Dictionary<ISymbol, List<(SyntaxNode Site, SeparatedSyntaxList<ArgumentSyntax> Arguments)>> calls = new(SymbolEqualityComparer.Default);
Dictionary<ISymbol, List<SyntaxNode>> mentions = new(SymbolEqualityComparer.Default);
List<(InvocationExpressionSyntax Call, IMethodSymbol Factory)> found = [];

ISymbol? Member(SyntaxNode node)
{
    for (SyntaxNode? at = node; at is not null; at = at.Parent)
    {
        switch (at)
        {
            case VariableDeclaratorSyntax { Parent.Parent: BaseFieldDeclarationSyntax } or BasePropertyDeclarationSyntax or BaseMethodDeclarationSyntax or EnumMemberDeclarationSyntax:
                return Model(at).GetDeclaredSymbol(at);
            case BaseTypeDeclarationSyntax type:
                return Model(type).GetDeclaredSymbol(type);
        }
    }

    return null;
}

foreach (SyntaxTree tree in trees)
{
    SemanticModel model = models[tree];
    foreach (SyntaxNode node in tree.GetRoot().DescendantNodes())
    {
        if (node is InvocationExpressionSyntax or BaseObjectCreationExpressionSyntax or ConstructorInitializerSyntax or PrimaryConstructorBaseTypeSyntax
            && model.GetSymbolInfo(node).Symbol is IMethodSymbol called)
        {
            IMethodSymbol definition = called.OriginalDefinition;
            ArgumentListSyntax? list = node switch
            {
                InvocationExpressionSyntax invocation => invocation.ArgumentList,
                BaseObjectCreationExpressionSyntax creation => creation.ArgumentList,
                ConstructorInitializerSyntax initializer => initializer.ArgumentList,
                _ => ((PrimaryConstructorBaseTypeSyntax)node).ArgumentList,
            };
            if (!calls.TryGetValue(definition, out List<(SyntaxNode, SeparatedSyntaxList<ArgumentSyntax>)>? sites))
            {
                calls[definition] = sites = [];
            }

            sites.Add((node, list?.Arguments ?? []));
            if (node is InvocationExpressionSyntax factory && definition.IsStatic && SymbolEqualityComparer.Default.Equals(definition.ContainingType, sourceType))
            {
                found.Add((factory, definition));
            }
        }

        if (node is SimpleNameSyntax or BaseObjectCreationExpressionSyntax && model.GetSymbolInfo(node).Symbol is ISymbol used
            && used.ContainingAssembly?.Name == "Sources" && used is IFieldSymbol or IPropertySymbol or IMethodSymbol && Member(node) is ISymbol user)
        {
            ISymbol of = used is IMethodSymbol method ? (method.ReducedFrom ?? method).OriginalDefinition : used.OriginalDefinition;
            if (!users.TryGetValue(of, out HashSet<ISymbol>? set))
            {
                users[of] = set = new(SymbolEqualityComparer.Default);
                mentions[of] = [];
            }

            set.Add(user);
            mentions[of].Add(node);
        }
    }
}

// The texts an expression may have, under what is known of the parameters around it; null stands for what only a run can tell.
const string Open = "…";
IEnumerable<string?> Texts(ExpressionSyntax? expression, Dictionary<ISymbol, string?> known, int depth)
{
    if (expression is null || depth > 12)
    {
        return [Open];
    }

    if (Model(expression).GetConstantValue(expression) is { HasValue: true } constant)
    {
        return [constant.Value is null ? null : Convert.ToString(constant.Value, CultureInfo.InvariantCulture)];
    }

    switch (expression)
    {
        case ParenthesizedExpressionSyntax inner:
            return Texts(inner.Expression, known, depth + 1);
        case ConditionalExpressionSyntax choice:
            return Texts(choice.WhenTrue, known, depth + 1).Concat(Texts(choice.WhenFalse, known, depth + 1));
        case SwitchExpressionSyntax choice:
            return choice.Arms.SelectMany(arm => Texts(arm.Expression, known, depth + 1));
        case BinaryExpressionSyntax sum when sum.IsKind(SyntaxKind.AddExpression):
            return from left in Texts(sum.Left, known, depth + 1) from right in Texts(sum.Right, known, depth + 1) select left + right;
        case InterpolatedStringExpressionSyntax written:
            return written.Contents.Aggregate((IEnumerable<string?>)[string.Empty], (texts, part) =>
                from text in texts
                from next in part is InterpolatedStringTextSyntax plain ? [plain.TextToken.ValueText] : Texts(((InterpolationSyntax)part).Expression, known, depth + 1)
                select text + next);
        case ThrowExpressionSyntax:
            return [];
    }

    ISymbol? symbol = Model(expression).GetSymbolInfo(expression).Symbol;
    if (symbol is IParameterSymbol parameter)
    {
        return [known.TryGetValue(parameter, out string? value) ? value : Open];
    }

    if (symbol is ILocalSymbol or IFieldSymbol && symbol.DeclaringSyntaxReferences.FirstOrDefault()?.GetSyntax() is VariableDeclaratorSyntax { Initializer.Value: ExpressionSyntax start })
    {
        return Texts(start, known, depth + 1);
    }

    return [Open];
}

// Every way in which the parameters that a node reads can be filled by the calls of the method around it.
IEnumerable<Dictionary<ISymbol, string?>> Fillings(SyntaxNode node, int depth)
{
    IParameterSymbol[] read = [.. Reaches(node, 0).OfType<IParameterSymbol>().Distinct<IParameterSymbol>(SymbolEqualityComparer.Default)
        .Where(parameter => parameter.ContainingSymbol is IMethodSymbol { MethodKind: not MethodKind.AnonymousFunction })];
    if (read.Length == 0 || depth > 6 || !calls.TryGetValue(read[0].ContainingSymbol.OriginalDefinition, out List<(SyntaxNode Site, SeparatedSyntaxList<ArgumentSyntax> Arguments)>? sites))
    {
        yield return new(SymbolEqualityComparer.Default);
        yield break;
    }

    foreach ((SyntaxNode site, SeparatedSyntaxList<ArgumentSyntax> arguments) in sites)
    {
        foreach (Dictionary<ISymbol, string?> outer in Fillings(site, depth + 1))
        {
            IEnumerable<Dictionary<ISymbol, string?>> filled = [new(SymbolEqualityComparer.Default)];
            foreach (IParameterSymbol parameter in read.Where(parameter => SymbolEqualityComparer.Default.Equals(parameter.ContainingSymbol, read[0].ContainingSymbol)))
            {
                ArgumentSyntax? argument = arguments.FirstOrDefault(given => given.NameColon?.Name.Identifier.Text == parameter.Name)
                    ?? (parameter.Ordinal < arguments.Count && arguments[parameter.Ordinal].NameColon is null ? arguments[parameter.Ordinal] : null);
                string?[] texts = argument is not null ? [.. Texts(argument.Expression, outer, 0)]
                    : [parameter.HasExplicitDefaultValue ? Convert.ToString(parameter.ExplicitDefaultValue, CultureInfo.InvariantCulture) : Open];
                filled = [.. filled.SelectMany(before => texts.Select(text => new Dictionary<ISymbol, string?>(before, SymbolEqualityComparer.Default) { [parameter] = text }))];
            }

            foreach (Dictionary<ISymbol, string?> filling in filled)
            {
                yield return filling;
            }
        }
    }
}

IEnumerable<ISymbol> Reaches(SyntaxNode node, int depth) => (node switch
    {
        InvocationExpressionSyntax invocation => invocation.ArgumentList.DescendantNodes(),
        BaseObjectCreationExpressionSyntax creation => creation.ArgumentList?.DescendantNodes() ?? [],
        _ => node.DescendantNodesAndSelf(),
    })
    .OfType<IdentifierNameSyntax>().SelectMany(name => Model(name).GetSymbolInfo(name).Symbol switch
    {
        IParameterSymbol parameter => [parameter],
        ILocalSymbol local when depth < 4 && local.DeclaringSyntaxReferences.FirstOrDefault()?.GetSyntax() is VariableDeclaratorSyntax { Initializer.Value: ExpressionSyntax start } => Reaches(start, depth + 1),
        _ => Enumerable.Empty<ISymbol>(),
    });

static bool Shown(ISymbol symbol)
{
    for (ISymbol? at = symbol; at is not null and not INamespaceSymbol; at = at.ContainingSymbol)
    {
        if (at.DeclaredAccessibility is not (Accessibility.Public or Accessibility.Protected or Accessibility.ProtectedOrInternal))
        {
            return false;
        }
    }

    return true;
}

static INamedTypeSymbol Outermost(ISymbol symbol)
{
    INamedTypeSymbol type = symbol as INamedTypeSymbol ?? symbol.ContainingType;
    return type.ContainingType is null ? type : Outermost(type.ContainingType);
}

// The public types in whose results it shows: from member to member that uses it, until one can be seen from outside.
List<INamedTypeSymbol> ShownBy(ISymbol origin)
{
    HashSet<ISymbol> seen = new([origin], SymbolEqualityComparer.Default);
    Queue<ISymbol> open = new([origin]);
    HashSet<INamedTypeSymbol> types = new(SymbolEqualityComparer.Default);
    while (open.TryDequeue(out ISymbol? member))
    {
        INamedTypeSymbol type = Outermost(member);
        bool catalogue = type.Name == "Cautions" && type.ContainingType is null && type.ContainingNamespace.Name == "Refinish";
        if (type.DeclaredAccessibility == Accessibility.Public && !catalogue)
        {
            types.Add(type);
        }

        // The catalogue of cautions shows nothing by itself; who takes a caution out of it, or a list of some of them, does. The list of all is only an order.
        if ((Shown(member) && !catalogue) || (catalogue && member.Name == "All") || !users.TryGetValue(member.OriginalDefinition, out HashSet<ISymbol>? by))
        {
            continue;
        }

        foreach (ISymbol user in by.Where(seen.Add))
        {
            open.Enqueue(user);
        }
    }

    if (types.Count == 0 && Outermost(origin).DeclaredAccessibility == Accessibility.Public)
    {
        types.Add(Outermost(origin));
    }

    return [.. types.OrderBy(shown => shown.Name, StringComparer.Ordinal)];
}

// The standing that is given together with a node, in the call or the initializer around it.
static string? StandingBeside(SyntaxNode call) => call.Ancestors().TakeWhile(node => node is not MemberDeclarationSyntax or BaseFieldDeclarationSyntax).SelectMany(node => node switch
    {
        BaseObjectCreationExpressionSyntax creation => (creation.ArgumentList?.Arguments.Select(argument => argument.Expression) ?? [])
            .Concat(creation.Initializer?.Expressions.OfType<AssignmentExpressionSyntax>().Select(set => set.Right) ?? []),
        InvocationExpressionSyntax invocation => invocation.ArgumentList.Arguments.Select(argument => argument.Expression),
        _ => [],
    }).Select(expression => expression.ToString()).FirstOrDefault(argument => argument.StartsWith("Standing.", StringComparison.Ordinal));

// How it was looked up: the standing beside it, or beside the places that mention it, where there is one; else what its own text says.
string HowRead(SyntaxNode call, string text)
{
    string[] standings = StandingBeside(call) is string beside ? [beside]
        : mentions.TryGetValue(Member(call)!.OriginalDefinition, out List<SyntaxNode>? places) ? [.. places.Select(StandingBeside).OfType<string>().Distinct().Order(StringComparer.Ordinal)] : [];
    string? standing = standings.Length == 1 ? standings[0] : null;
    return standing switch
    {
        "Standing.Seen" => "read",
        "Standing.SecondHand" => "second-hand",
        "Standing.FromMemory" => "from memory",
        _ when Regex.IsMatch(text, "second-hand|quoted|as reproduced|as printed|as given by|as read in|read as|seen in|read once|public copy|as listed there", RegexOptions.IgnoreCase) => "second-hand",
        _ when text.Contains("from memory", StringComparison.Ordinal) => "partly from memory",
        _ => string.Empty,
    };
}

List<Entry> entries = [];
foreach ((InvocationExpressionSyntax call, IMethodSymbol factory) in found.Where(each => Outermost(Member(each.Call)!).Name != "Source"))
{
    List<INamedTypeSymbol> shown = ShownBy(Member(call)!);
    foreach (Dictionary<ISymbol, string?> known in Fillings(call, 0))
    {
        ExpressionSyntax Argument(int index) => call.ArgumentList.Arguments[index].Expression;
        foreach (string document in Texts(Argument(0), known, 0).OfType<string>())
        {
            foreach (string? section in call.ArgumentList.Arguments.Count > 1 ? Texts(Argument(1), known, 0) : [null])
            {
                entries.Add(new(factory.Name, document, section ?? string.Empty, HowRead(call, document + " " + section), shown));
            }
        }
    }
}

if (entries.Count < 400)
{
    throw new InvalidOperationException("Only " + entries.Count + " sources were found: the reading of the code went wrong.");
}

static string Cell(string text) => text.Replace("|", "\\|").Replace("<", "&lt;").Replace("*", "\\*").Replace("_", "\\_").Trim();

static string Types(IEnumerable<INamedTypeSymbol> types)
{
    INamedTypeSymbol[] named = [.. types.Distinct<INamedTypeSymbol>(SymbolEqualityComparer.Default).OrderBy(type => type.Name, StringComparer.Ordinal)];
    string text = string.Join(", ", named.Take(6).Select(type => "`" + type.Name + "`"));
    return named.Length == 0 ? "not shown by a public type" : named.Length > 6 ? text + " and " + (named.Length - 6) + " more" : text;
}

void Write(string file, StringBuilder generated)
{
    string kept = File.ReadAllText(Path.Combine(repository, "docs", file)).ReplaceLineEndings("\n");
    int end = kept.IndexOf(Marker, StringComparison.Ordinal);
    if (end < 0)
    {
        throw new InvalidOperationException("docs/" + file + " has no line: " + Marker);
    }

    File.WriteAllText(Path.Combine(args[2], file), kept[..end] + Marker + "\n\n" + generated.ToString().ReplaceLineEndings("\n").TrimEnd() + "\n");
}

// One row for a text; where it is used is gathered.
List<(Entry Entry, List<INamedTypeSymbol> Shown)> rows = [.. entries
    .GroupBy(entry => (entry.Kind, entry.Document, entry.Section, entry.Read))
    .Select(group => (group.First(), group.SelectMany(entry => entry.Shown).ToList()))];
(string Kind, string Title, string Said)[] kinds =
[
    ("Published", "Published documents", "Most of these name a document that can be looked up. Some do not: \"a chemical data page\", \"a handbook of duct design\", \"finishing trade magazine\", \"guide to epoxy calculations\" and \"public flow-cup conversion program\" say what was read and not where it can be found again, so rest nothing on them before you have found the figure yourself. The third column says how the place was looked up: *read* in a copy of the document, *second-hand* on a page that quotes it, *from memory* in whole or in part; a dash where the entry makes no remark."),
    ("FromMemory", "From memory, unverified", "Recalled from general knowledge of standards and physics. Look these up before anything rests on them."),
    ("CommonPractice", "Common practice, without a source", "What the trade commonly does; no document was found that says so."),
    ("Invented", "Invented", "Made up for the demonstration, or as a default to be replaced by your own figure."),
    ("Derived", "Derived", "Algebra and definitions: how the number follows from those above it."),
    ("Supplied", "Supplied by the caller", "What you measured, read off a data sheet or put into a price book. It is as good as what you gave."),
];
StringBuilder page = new();
page.AppendLine("## How many").AppendLine().AppendLine("| kind | sources | places in the code |").AppendLine("|---|---:|---:|");
foreach ((string kind, string title, string _) in kinds)
{
    page.AppendLine(CultureInfo.InvariantCulture, $"| {title} | {rows.Count(row => row.Entry.Kind == kind)} | {found.Count(each => each.Factory.Name == kind && Outermost(Member(each.Call)!).Name != "Source")} |");
}

foreach ((string kind, string title, string said) in kinds)
{
    page.AppendLine().AppendLine("## " + title).AppendLine().AppendLine(said).AppendLine();
    List<(Entry Entry, List<INamedTypeSymbol> Shown)> ofKind = [.. rows.Where(row => row.Entry.Kind == kind)
        .OrderBy(row => row.Entry.Document, StringComparer.OrdinalIgnoreCase).ThenBy(row => row.Entry.Section, StringComparer.OrdinalIgnoreCase)];
    if (kind == "Published")
    {
        page.AppendLine("| document | place | looked up | used by |").AppendLine("|---|---|---|---|");
        foreach ((Entry entry, List<INamedTypeSymbol> shown) in ofKind)
        {
            page.AppendLine(CultureInfo.InvariantCulture, $"| {Cell(entry.Document)} | {Cell(entry.Section)} | {(entry.Read.Length == 0 ? "–" : entry.Read)} | {Types(shown)} |");
        }
    }
    else
    {
        page.AppendLine("| what | used by |").AppendLine("|---|---|");
        foreach ((Entry entry, List<INamedTypeSymbol> shown) in ofKind)
        {
            page.AppendLine(CultureInfo.InvariantCulture, $"| {Cell(entry.Document)} | {Types(shown)} |");
        }
    }
}

Directory.CreateDirectory(args[2]);
Write("sources.md", page);

// The cautions, by hazard.
page = new StringBuilder();
INamedTypeSymbol cautionType = compilation.GetTypeByMetadataName("Refinish.Caution")!;
List<(string Hazard, string Code, string Sentence, string DecidedBy, string Concerns, string Basis, List<INamedTypeSymbol> Shown)> cautions = [];
foreach ((SyntaxNode site, SeparatedSyntaxList<ArgumentSyntax> given) in calls.Where(each => SymbolEqualityComparer.Default.Equals(each.Key.ContainingType, cautionType) && each.Key is IMethodSymbol { MethodKind: MethodKind.Constructor }).SelectMany(each => each.Value))
{
    foreach (Dictionary<ISymbol, string?> known in Fillings(site, 0))
    {
        string concerns = given[5].Expression.ToString().Replace("Audience.", string.Empty).Replace(" |", ",").ToLowerInvariant();
        string hazard = given[1].Expression.ToString().Replace("Hazard.", string.Empty);
        InvocationExpressionSyntax? basis = given[4].Expression as InvocationExpressionSyntax
            ?? (Model(site).GetSymbolInfo(given[4].Expression).Symbol?.DeclaringSyntaxReferences.FirstOrDefault()?.GetSyntax() as VariableDeclaratorSyntax)?.Initializer?.Value as InvocationExpressionSyntax;
        string said = basis is null ? string.Empty : string.Join(": ", basis.ArgumentList.Arguments.Select(argument => Texts(argument.Expression, known, 0).First()));
        string kind = basis is null ? string.Empty : ((MemberAccessExpressionSyntax)basis.Expression).Name.Identifier.Text switch
        {
            "Published" => string.Empty,
            "CommonPractice" => "common practice, no source: ",
            "FromMemory" => "from memory, unverified: ",
            string other => other.ToLowerInvariant() + ": ",
        };
        foreach (string sentence in Texts(given[2].Expression, known, 0).OfType<string>())
        {
            cautions.Add((hazard, Texts(given[0].Expression, known, 0).First() ?? string.Empty, sentence, Texts(given[3].Expression, known, 0).First() ?? string.Empty, concerns, kind + said, ShownBy(Member(site)!)));
        }
    }
}

foreach (string hazard in compilation.GetTypeByMetadataName("Refinish.Hazard")!.GetMembers().OfType<IFieldSymbol>().Select(field => field.Name))
{
    page.AppendLine("### " + Regex.Replace(hazard, "(?<=[a-z])([A-Z])", match => " " + match.Value.ToLowerInvariant())).AppendLine();
    page.AppendLine("| code | caution | decided by | concerns | rests on | shown by |").AppendLine("|---|---|---|---|---|---|");
    foreach (var caution in cautions.Where(caution => caution.Hazard == hazard).DistinctBy(caution => caution.Sentence).OrderBy(caution => caution.Sentence, StringComparer.Ordinal))
    {
        page.AppendLine(CultureInfo.InvariantCulture, $"| `{caution.Code}` | {Cell(caution.Sentence)} | {Cell(caution.DecidedBy)} | {caution.Concerns} | {Cell(caution.Basis)} | {Types(caution.Shown)} |");
    }

    page.AppendLine();
}

Write("safety.md", page);

// The tests' evidence.
List<(string Floor, string Basis, string Text, string Test)> evidence = [];
foreach (SyntaxTree tree in Parse("tests"))
{
    foreach (AttributeSyntax attribute in tree.GetRoot().DescendantNodes().OfType<AttributeSyntax>().Where(attribute => attribute.Name.ToString() == "Evidence"))
    {
        SeparatedSyntaxList<AttributeArgumentSyntax> given = attribute.ArgumentList!.Arguments;
        string text = string.Concat(given[1].DescendantNodes().OfType<LiteralExpressionSyntax>().Select(literal => literal.Token.ValueText));
        string floor = Regex.Match(tree.FilePath, @"Refinish\.Core\.Tests[/\\](?<floor>\w+)[/\\]").Groups["floor"].Value;
        evidence.Add((floor, given[0].ToString().Replace("Basis.", string.Empty), text, attribute.FirstAncestorOrSelf<MethodDeclarationSyntax>()!.Identifier.Text));
    }
}

string[] order = ["Foundation", "Fixtures", "Climate", "Colours", "Coatings", "Substrates", "Films", "Curing", "Inspection", "Coverage", "Air", "Estimating", "Scheduling", "Jobs", "House"];
string[] floors = [.. evidence.Select(each => each.Floor).Distinct().OrderBy(floor => Array.IndexOf(order, floor) is int at and >= 0 ? at : order.Length).ThenBy(floor => floor, StringComparer.Ordinal)];
string[] bases = ["Cited", "Independent", "Identity", "Contract", "Regression"];
page = new StringBuilder("## How many tests rest on what\n\n").AppendLine("| floor | " + string.Join(" | ", bases.Select(each => each.ToLowerInvariant())) + " |").AppendLine("|---|" + string.Concat(bases.Select(_ => "---:|")));
foreach (string floor in floors)
{
    page.AppendLine("| " + floor + " | " + string.Join(" | ", bases.Select(each => evidence.Count(test => test.Floor == floor && test.Basis == each))) + " |");
}

page.AppendLine("| **all** | " + string.Join(" | ", bases.Select(each => "**" + evidence.Count(test => test.Basis == each) + "**")) + " |");
foreach ((string basis, string title) in new[] { ("Cited", "Published numbers that tests hold"), ("Independent", "Other routes that tests hold") })
{
    page.AppendLine().AppendLine("## " + title).AppendLine();
    foreach (string floor in floors.Where(floor => evidence.Any(test => test.Floor == floor && test.Basis == basis)))
    {
        page.AppendLine("### " + floor + (basis == "Cited" ? ", published" : ", other routes")).AppendLine().AppendLine("| " + (basis == "Cited" ? "published number" : "other route") + " | test |").AppendLine("|---|---|");
        foreach (IGrouping<string, (string Floor, string Basis, string Text, string Test)> group in evidence.Where(test => test.Floor == floor && test.Basis == basis).GroupBy(test => test.Text))
        {
            page.AppendLine("| " + Cell(group.Key) + " | " + string.Join(", ", group.Select(test => Cell(test.Test.Replace('_', ' '))).Distinct()) + " |");
        }

        page.AppendLine();
    }
}

page.AppendLine().AppendLine("## Tables that tests read").AppendLine().AppendLine("| table | where it comes from |").AppendLine("|---|---|");
foreach (string table in Directory.EnumerateFiles(Path.Combine(repository, "tests/Refinish.Core.Tests/Tables"), "*.csv").Order(StringComparer.Ordinal))
{
    page.AppendLine("| " + Cell(Path.GetFileName(table)) + " | " + Cell(string.Join(' ', File.ReadLines(table).TakeWhile(line => line.StartsWith('#')).Select(line => line.TrimStart('#', ' ')))) + " |");
}

Write("evidence.md", page);
Console.WriteLine(cautions.Count + " cautions, " + rows.Count + " sources from " + found.Count + " places, " + evidence.Count + " pieces of evidence");

internal sealed record Entry(string Kind, string Document, string Section, string Read, List<INamedTypeSymbol> Shown);
