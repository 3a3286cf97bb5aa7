using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace ReworkThermal.Data.Toml;

/// <summary>Turns TOML text into a tree of values that know their lines.</summary>
internal static class TomlTree
{
    private const int MostMessage = 160;
    private const int MostKeys = 16;
    private const string TooDeep = "lists or tables are nested too deeply; 64 levels are read, and no data file needs more than a few";

    /// <summary>Parses a document.</summary>
    /// <param name="text">TOML 1.0 text.</param>
    /// <param name="file">Name used in error messages.</param>
    /// <returns>The root table.</returns>
    /// <exception cref="DataFileException">The text is not valid TOML; every syntax problem is listed.</exception>
    internal static TomlValue.Table Parse(string text, string file)
    {
        DocumentSyntax document = Syntax(text, file);
        if (document.HasErrors)
        {
            throw new DataFileException([.. document.Diagnostics
                .Where(d => d.Kind == DiagnosticMessageKind.Error)
                .Select(d => new DataFileProblem(file, d.Span.Start.Line + 1, string.Empty, "not valid TOML: " + OneLine(d.Message)))]);
        }

        TomlValue.Table root = new(1, []);
        foreach (KeyValueSyntax pair in document.KeyValues)
        {
            Add(root, pair, file);
        }

        foreach (TableSyntaxBase table in document.Tables)
        {
            TomlValue.Table target = Open(root, table, file);
            foreach (SyntaxNode item in table.Items)
            {
                if (item is KeyValueSyntax pair)
                {
                    Add(target, pair, file);
                }
            }
        }

        return root;
    }

    private static DocumentSyntax Syntax(string text, string file)
    {
        try
        {
            return SyntaxParser.Parse(text, file, true);
        }
        catch (TomlException problem)
        {
            // The parser gives up on what is nested too deeply for it.
            throw new DataFileException([new DataFileProblem(file, problem.Line ?? 0, string.Empty, TooDeep)]);
        }
    }

    private static TomlValue.Table Open(TomlValue.Table root, TableSyntaxBase syntax, string file)
    {
        int line = LineOf(syntax);
        List<string> path = PathOf(syntax.Name!);
        RefuseDeep(path, line, file);
        TomlValue.Table parent = Descend(root, path.Take(path.Count - 1), line, file);
        string last = path[^1];
        if (syntax is TableArraySyntax)
        {
            TomlValue.Table fresh = new(line, []);
            if (parent.Fields.TryGetValue(last, out TomlValue? existing) && existing is TomlValue.List list)
            {
                list.Items.Add(fresh);
            }
            else
            {
                parent.Fields[last] = new TomlValue.List(line, [fresh]);
            }

            return fresh;
        }

        return Descend(parent, [last], line, file);
    }

    private static TomlValue.Table Descend(TomlValue.Table from, IEnumerable<string> path, int line, string file)
    {
        TomlValue.Table current = from;
        foreach (string key in path)
        {
            if (!current.Fields.TryGetValue(key, out TomlValue? next))
            {
                TomlValue.Table fresh = new(line, []);
                current.Fields[key] = fresh;
                current = fresh;
                continue;
            }

            current = next switch
            {
                TomlValue.Table table => table,
                TomlValue.List { Items: [.., TomlValue.Table tail] } => tail,
                _ => throw new DataFileException([new DataFileProblem(file, line, key, "is used both as a value and as a table")]),
            };
        }

        return current;
    }

    private static void Add(TomlValue.Table table, KeyValueSyntax pair, string file)
    {
        List<string> path = PathOf(pair.Key!);
        int line = LineOf(pair);
        RefuseDeep(path, line, file);
        TomlValue.Table target = Descend(table, path.Take(path.Count - 1), line, file);
        target.Fields[path[^1]] = Convert(pair.Value!, file);
    }

    private static void RefuseDeep(List<string> path, int line, string file)
    {
        if (path.Count > MostKeys)
        {
            throw new DataFileException([new DataFileProblem(file, line, string.Empty, $"a name of {path.Count} parts is nested too deeply; at most {MostKeys} are read")]);
        }
    }

    private static TomlValue Convert(ValueSyntax value, string file)
    {
        int line = LineOf(value);
        switch (value)
        {
            case StringValueSyntax text:
                return new TomlValue.Text(line, text.Value ?? string.Empty);
            case IntegerValueSyntax integer:
                return new TomlValue.Number(line, integer.Value);
            case FloatValueSyntax number:
                return new TomlValue.Number(line, number.Value);
            case BooleanValueSyntax truth:
                return new TomlValue.Truth(line, truth.Value);
            case DateTimeValueSyntax:
                return new TomlValue.Moment(line);
            case ArraySyntax array:
                return new TomlValue.List(line, [.. array.Items.Select(i => Convert(i.Value!, file))]);
            case InlineTableSyntax inline:
                TomlValue.Table table = new(line, []);
                foreach (InlineTableItemSyntax item in inline.Items)
                {
                    Add(table, item.KeyValue!, file);
                }

                return table;
            default:
                throw new DataFileException([new DataFileProblem(file, line, string.Empty, "holds a kind of value that is not understood")]);
        }
    }

    private static List<string> PathOf(KeySyntax key)
    {
        List<string> path = [NameOf(key.Key!)];
        foreach (DottedKeyItemSyntax dotted in key.DotKeys)
        {
            path.Add(NameOf(dotted.Key!));
        }

        return path;
    }

    private static string NameOf(BareKeyOrStringValueSyntax key) => key switch
    {
        BareKeySyntax bare => bare.Key?.Text ?? string.Empty,
        StringValueSyntax text => text.Value ?? string.Empty,
        _ => key.ToString() ?? string.Empty,
    };

    private static int LineOf(SyntaxNode node) => node.Span.Start.Line + 1;

    // The parser repeats the text that it stumbled over, sometimes to the end of the file.
    private static string OneLine(string message)
    {
        string first = message.Trim().ReplaceLineEndings("\n").Split('\n')[0];
        return first.Length <= MostMessage ? first : first[..MostMessage] + "...";
    }
}
