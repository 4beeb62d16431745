using System.Text;
using System.Text.Json.Nodes;
using CoatPlan.App;
using CoatPlan.App.Commands;
using CoatPlan.App.Desk;
using CoatPlan.App.Screens;
using CoatPlan.Jobs;
using CoatPlan.Jobs.Editing;
using CoatPlan.Jobs.Reading;
using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using CoatPlan.Quantities;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Jobs;

namespace CoatPlan.Tests.Docs;

/// <summary>Pages of the reference that are written from what the program itself reads; renewed with COATPLAN_PICTURES=1.</summary>
public sealed class ReferencePages
{
    private const int WordsShown = 9;

    // How each key is written in the job that has them all.
    private static readonly Dictionary<(string Table, string Key), string> Written = ExamplesOf(JobFiles.EveryKey);

    [Fact]
    public void The_reference_of_the_job_file_is_the_newest() => IsNewest("reference/job-file.md", JobFile());

    [Fact]
    public void The_reference_of_the_commands_is_the_newest() => IsNewest("reference/commands.md", Commands());

    [Fact]
    public void The_reference_of_the_presets_is_the_newest() => IsNewest("reference/presets.md", Presets());

    [Fact]
    public void The_reference_of_the_keys_is_the_newest() => IsNewest("reference/keys.md", KeysPage());

    [Fact]
    public void Every_field_of_a_plan_is_on_its_page()
    {
        var page = string.Join('\n', DocsPage.Of("reference/plan-json.md").Prose);
        var fields = new SortedSet<string>(StringComparer.Ordinal);
        Collect(JsonNode.Parse(CommandRun.Of("schema", "plan").Output)!, fields);

        fields.Count.ShouldBeGreaterThan(100);
        fields.Where(field => !page.Contains($"`{field}`", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    private static void Collect(JsonNode node, SortedSet<string> fields)
    {
        if (node is JsonObject map)
        {
            foreach (var (name, _) in map["properties"] as JsonObject ?? [])
                fields.Add(name);
        }

        foreach (var inner in node switch { JsonObject o => o.Select(pair => pair.Value), JsonArray list => list, _ => [] })
        {
            if (inner is not null)
                Collect(inner, fields);
        }
    }

    private static void IsNewest(string name, string text)
    {
        var path = Path.Combine(DocsPage.Folder, name);
        if (Environment.GetEnvironmentVariable("COATPLAN_PICTURES") is not null)
            File.WriteAllText(path, text);

        File.ReadAllText(path).ReplaceLineEndings("\n").ShouldBe(text, "renew it: COATPLAN_PICTURES=1 dotnet test --filter FullyQualifiedName~ReferencePages");
    }

    private static string JobFile()
    {
        var page = new StringBuilder("""
            # The job file

            A job file says what is refinished, where, with which cans, and when there is time. It is a text file in YAML, one job a file, its name ending in `.job.yaml`. JSON is YAML too,
            so scripts can write that. This page is written from the table that the program reads by.

            How to write YAML, in five lines:

            - `key: value`, a blank behind the colon. What belongs to a key stands below it, two blanks further in.
            - A list is `[one, two]`, or one line for each with a hyphen in front.
            - Several keys on one line go in braces: `{length: 22 ft, width: 20 ft}`.
            - A `#` begins a remark.
            - Never a tab.

            `coatplan check FILE` finds every mistake in one go. `coatplan schema` prints the JSON Schema (draft 2020-12), with which an editor completes and checks while you type.

            ## Values

            - A number takes its unit: `8 ft2`, `6 1/2 sq ft`, `0.75 m²`, `70 °F`, `21 C`, `1 h 30 min`, `800 cfm`, `12 oz` (mass), `12 fl oz` (volume), `1.5 mil`, `85 %`. A bare number where a
              unit is due is a mistake, since nobody can tell inches from millimetres.
            - Pint, quart, gallon and fluid ounce are US customary.
            - A range is `50-90 °F`. A decimal is written with a point.
            - Times are local: `2027-05-14 16:00`. The change to summer time and back is not modelled.
            - Case does not matter in words, a hyphen equals a blank, and both spellings work of aluminium, colour, grey, fibreglass and galvanised.
            - **Bold** keys are required. "By the preset" in the column *unless said*: what the product's class says.

            ## Windows for the next coat

            `10 min-1 h`: not before 10 minutes after the coat, not after 1 hour. `after 24 h`: not before. `within 30 min`: from when it can be touched until then. A list is either/or.

            ## Working hours

            Keys of `hours` are a date (`2027-05-14`), a day (`Fri`) or a range of days (`Mon-Fri`); values are a span (`16:00-21:00`), a list of spans, or `none`. A date beats a day, a day beats a
            range. `22:00-02:00` ends on the next day.

            """);
        var seen = new HashSet<string>();
        Table(page, JobKeys.Job, "The whole file", seen);
        page.Append("\n## Words\n\nA folder of presets may add to them. What they mean is in [presets](presets.md).\n\n| key | words |\n| --- | --- |\n");
        var words = Vocabulary.Contract;
        foreach (var (key, known) in new[]
        {
            ("material", words.Materials), ("finish", words.Finishes), ("condition", words.Conditions), ("form", words.Forms), ("near", words.Near), ("mask: kind", words.MaskKinds),
            ("preset", words.ProductPresets), ("hazards", words.Hazards), ("operation", words.Operations),
        })
        {
            page.Append("| ").Append(key).Append(" | ").AppendJoin(", ", known).Append(" |\n");
        }

        return page.ToString().TrimEnd() + "\n";
    }

    private static Dictionary<(string Table, string Key), string> ExamplesOf(string job)
    {
        var found = new Dictionary<(string, string), string>();
        Walk(ModelEdit.Of(YamlText.Read(job, new ProblemList(null))!), new MapForm(() => JobKeys.Job));
        return found;

        void Walk(JobValue value, Form form)
        {
            switch (value, form)
            {
                case (MapValue map, MapForm of):
                    foreach (var (name, inner) in map.Entries)
                    {
                        if (Plain(inner) is { } text)
                            found.TryAdd((of.Table().What, name), text);
                        if (of.Table().Find(name) is { } key)
                            Walk(inner, key.Form);
                    }

                    break;
                case (MapValue map, KeyedForm of):
                    foreach (var (_, inner) in map.Entries)
                        Walk(inner, of.Value);
                    break;
                case (ListValue list, ListForm of):
                    foreach (var item in list.Items)
                        Walk(item, of.Item);
                    break;
                case (ListValue list, OneOrListForm of):
                    foreach (var item in list.Items)
                        Walk(item, of.Item);
                    break;
                default:
                    break;
            }
        }

        static string? Plain(JobValue value) => value switch
        {
            TextValue text => text.Text,
            ListValue { Items: { IsEmpty: false } items } when items.All(item => item is TextValue) => $"[{string.Join(", ", items.Select(Plain))}]",
            MapValue { Entries: [{ Value: TextValue }, ..] } map when map.Entries.All(entry => entry.Value is TextValue) && map.Entries.Length <= 2 => $"{{{string.Join(", ", map.Entries.Select(entry => $"{entry.Key}: {Plain(entry.Value)}"))}}}",
            _ => null,
        };
    }

    private static void Table(StringBuilder page, KeyTable table, string title, HashSet<string> seen)
    {
        if (!seen.Add(table.What))
            return;

        page.Append("\n## ").Append(title).Append("\n\n| key | form | unless said | example | says |\n| --- | --- | --- | --- | --- |\n");
        var inner = new List<(KeyTable Table, string Title)>();
        foreach (var key in table.Keys)
        {
            var name = key.IsRequired ? $"**{key.Name}**" : key.Name;
            var unless = key.IsRequired ? "–" : key.Unless.Length > 0 ? key.Unless : table == JobKeys.Product && key.Name != "preset" ? "by the preset" : "–";
            var example = Written.TryGetValue((table.What, key.Name), out var written) ? $"`{key.Name}: {written}`" : "";
            page.Append("| ").Append(name).Append(" | ").Append(Form(key.Form, inner)).Append(" | ").Append(unless).Append(" | ").Append(example.Replace("|", "\\|", StringComparison.Ordinal)).Append(" | ").Append(key.Says).Append(" |\n");
        }

        foreach (var (next, name) in inner)
            Table(page, next, name, seen);
    }

    private static string Form(Form form, List<(KeyTable, string)> inner) => form switch
    {
        MapForm map => Link(map.Table(), inner),
        KeyedForm keyed => $"names of your own, each with: {Form(keyed.Value, inner)}",
        ListForm list => $"list of: {Form(list.Item, inner)}",
        OneOrListForm list => $"{Form(list.Item, inner)}; or a list of them",
        EitherForm either => $"{Form(either.First, inner)}; or {Form(either.Second, inner)}",
        FlagForm => "`true` or `false`",
        WholeForm whole => $"whole number, {whole.Bounds}",
        NumberForm number => $"number, {number.Bounds}",
        MoneyForm => $"money without a sign, {JobRanges.Money}",
        QuantityForm quantity => $"{Measure(quantity.Dimension)}, {quantity.Bounds}",
        RangeForm range => $"{Measure(range.Dimension)} or a range, {range.Bounds}",
        TimeForm => "date and time",
        WordForm word when word.Words(Vocabulary.Contract) is var words => words.Length <= WordsShown ? string.Join(", ", words) : $"one of the [{word.What}s](#words)",
        WrittenForm written => written.Due.Replace('`', '\'') is var due && due.StartsWith("a ", StringComparison.Ordinal) ? due[2..] : written.Due,
        _ => "text",
    };

    private static string Link(KeyTable table, List<(KeyTable, string)> inner)
    {
        var title = table.What.Replace("`", "", StringComparison.Ordinal);
        title = char.ToUpperInvariant(title[0]) + title[1..];
        inner.Add((table, title));
#pragma warning disable CA1308 // An anchor is in lower case.
        return $"[{title.ToLowerInvariant()}](#{title.ToLowerInvariant().Replace(' ', '-')})";
#pragma warning restore CA1308
    }

    private static string Measure(Dimension dimension) => dimension switch
    {
        Dimension.Ratio => "share",
        Dimension.Duration => "time",
        Dimension.Flow => "air flow",
        Dimension.MoneyPerHour => "money an hour",
#pragma warning disable CA1308 // A word in a sentence.
        _ => dimension.ToString().ToLowerInvariant(),
#pragma warning restore CA1308
    };

    private static string KeysPage()
    {
        var page = new StringBuilder("""
            # Keys of the terminal UI

            `coatplan` opens it with a new job, `coatplan JOB` with a job of yours. Everything in it is done by keys alone. A mouse does the same: a click chooses, a second one changes or
            opens, the wheel scrolls, a click on a place's name opens the place. `F1` shows this list in the program, `F10` what can be done at the place that is open. While a value is typed,
            every letter belongs to it. This page is written from the table that the program itself reads by.

            """);
        foreach (var group in Keys.All.GroupBy(row => row.Group))
        {
            page.Append("\n## ").Append(group.Key).Append("\n\n| key | what it does | where |\n| --- | --- | --- |\n");
            foreach (var row in group)
            {
                page.Append("| ").AppendJoin(", ", row.Pressed.Select(key => $"`{key.Name}`")).Append(" | ").Append(row.Means).Append(" | ").Append(PlacesOf(row)).Append(" |\n");
            }
        }

        return page.ToString();
    }

    private static string PlacesOf(KeyRow row) => row.Places.IsEmpty ? "while typing"
        : row.Places.Length == Enum.GetValues<DeskPlace>().Length ? "everywhere"
        : string.Join(", ", row.Places.Select(place => place.ToString().ToLowerInvariant()));

    private static string Commands()
    {
        var surroundings = new Surroundings { Out = TextWriter.Null, Error = TextWriter.Null, OpenInput = () => Stream.Null, InputIsTerminal = false, OutputIsTerminal = false };
        var root = CommandTree.Of(surroundings);
        var page = new StringBuilder($"""
            # Commands

            {root.Description}

            Every command takes `--help`. How they end is in [exit codes](exit-codes.md); more about done, when, chance and compare is in [their own page](outlook-commands.md). This page is
            written from the commands themselves, as is the manual page (`coatplan manual`).

            """);
        foreach (var command in root.Subcommands.Where(command => !command.Hidden))
        {
            page.Append("\n## coatplan ").Append(string.Join(' ', new[] { command.Name }.Concat(command.Arguments.Select(argument => argument.Arity.MinimumNumberOfValues == 0 ? $"[{argument.Name}]" : argument.Name))));
            page.Append("\n\n").Append(command.Description).Append("\n\n");
            var rows = command.Arguments.Select(argument => ($"`{argument.Name}`", argument.Description))
                .Concat(command.Options.Where(option => !option.Hidden && option is not System.CommandLine.Help.HelpOption)
                    .Select(option => ($"`{option.Name}{(option.HelpName is { } value ? " " + value : "")}`{(option.Required ? " (required)" : "")}", option.Description))).ToList();
            if (rows.Count > 0)
                page.Append("| | |\n| --- | --- |\n");
            foreach (var (name, says) in rows)
                page.Append("| ").Append(name).Append(" | ").Append(says?.Replace("|", "\\|", StringComparison.Ordinal)).Append(" |\n");
            page.Append(rows.Count > 0 ? "\n" : "").Append("Example: `").Append(ExampleHelp.Of(command)).Append("`\n");
        }

        page.Append("""

            ## Completion

            | shell | once, in its start file |
            | --- | --- |
            | bash | `source <(coatplan completion bash)` |
            | zsh | `source <(coatplan completion zsh)`, after `compinit` |
            | fish | `coatplan completion fish \| source` |
            | pwsh | `coatplan completion pwsh \| Out-String \| Invoke-Expression` (7.3 and later) |

            ## Environment

            `NO_COLOR`, set and not empty: no colour is written. `TERM=dumb`: no emphasis either.
            """);
        return page.ToString().TrimEnd() + "\n";
    }

    private static string Presets()
    {
        var catalogue = Trade.Standard.Catalogue;
        var page = new StringBuilder("""
            # Presets

            What the program knows of the trade: one row for each word that a job file may use, with where it comes from and how well that is vouched for. `coatplan presets WORD` searches them. A
            shop changes or adds rows with files of its own: [how](../how-to/own-presets.md).

            | status | means |
            | --- | --- |
            | published | read in the source itself |
            | published, read second-hand | read in a text that quotes the source |
            | common practice | usual in the trade, no source that could be named |
            | computed | follows from other figures |
            | estimate | set by judgement |
            | from memory | known, but not looked up again |

            """);
        foreach (var table in PresetTables.Of(catalogue))
        {
            page.Append("\n## ").Append(table.Title).Append("\n\n| word | means | from |\n| --- | --- | --- |\n");
            foreach (var row in table.Rows)
                page.Append("| ").Append(Cell(row.Word)).Append(" | ").Append(Cell(row.Means)).Append(" | ").Append(Cell(row.From)).Append(" |\n");
        }

        return page.ToString().TrimEnd() + "\n";
    }

    private static string Cell(string text) => text.ReplaceLineEndings(" ").Replace("|", "\\|", StringComparison.Ordinal);
}
