using CoatPlan.Jobs;
using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using CsCheck;

namespace CoatPlan.Tests.Jobs;

public sealed class JobEditTests
{
    private static readonly string[] Texts =
    [
        JobFiles.Complete, JobFiles.Complete.ReplaceLineEndings("\r\n"), JobFiles.EveryKey.TrimEnd('\n'), JobFiles.EveryKeyAsJson,
        JobFiles.EveryKeyAsJson.Replace("\n", "", StringComparison.Ordinal).Replace("  ", "", StringComparison.Ordinal), .. JobFiles.Examples,
    ];

    [Theory]
    [InlineData("surfaces[0].area", "9 ft2", "    area: 8 ft2\n", "    area: 9 ft2\n")]
    [InlineData("surfaces[0].condition", "chips", "    condition: [oily, chips]\n", "    condition: chips\n")]
    [InlineData("surfaces[0].condition[1]", "scratches", "[oily, chips]", "[oily, scratches]")]
    [InlineData("coatplan", "2", "coatplan: 1                       # format number", "coatplan: 2                       # format number")]
    [InlineData("products.black.package.price", "10.25", "price: 9.50}", "price: 10.25}")]
    [InlineData("surfaces[0].name", "Inner fender: left", "name: Inner fender\n", "name: \"Inner fender: left\"\n")]
    [InlineData("products.black.name", "black, satin", "name: Satin black, underhood", "name: black, satin")]
    [InlineData("surfaces[0].mask[0].what", "loom, main", "what: wiring loom,", "what: \"loom, main\",")]
    [InlineData("systems.black-on-metal[1].coats", "2", "{product: etch, coats: 1}, {product: black, coats: 3}]", "{product: etch, coats: 1}, {product: black, coats: 2}]")]
    [InlineData("surfaces[0].faces", "level", "    stays: true\n", "    stays: true\n    faces: level\n")]
    [InlineData("surfaces[1].mask[0]", null, "", "")]
    [InlineData("built", "1978", "  finish-by: 2027-05-16 20:00", "  finish-by: 2027-05-16 20:00")]
    [InlineData("products.black.package.pack", "6", "price: 9.50}", "price: 9.50, pack: 6}")]
    [InlineData("crew.stations", "2", "  people: 1\n", "  people: 1\n  stations: 2\n")]
    [InlineData("prices.labour", "85 /h", "    system: black-on-metal\n", "    system: black-on-metal\nprices: {labour: 85 /h}\n")]
    public void A_value_is_set_and_nothing_else_changes(string path, string? value, string before, string after)
    {
        if (value is null)
        {
            JobEdit.Set(JobFiles.Complete, JobPath.Parse(path), JobValue.Of("x")).Problems.ShouldHaveSingleItem().Code.ShouldBe("not-editable");
            return;
        }

        var edit = JobEdit.Set(JobFiles.Complete, JobPath.Parse(path), JobValue.Of(value));

        edit.Problems.ShouldBeEmpty();
        if (path == "built") edit.Text.ShouldBe(JobFiles.Complete.Replace("20:00\n", "20:00\nbuilt: 1978\n", StringComparison.Ordinal));
        else edit.Text.ShouldBe(Once(JobFiles.Complete, before, after));
    }

    [Fact]
    public void A_list_in_block_style_gives_way_to_one_in_brackets()
    {
        const string text = "a:\n  condition: # why\n    - oily # very\n    # more\n    - chips\n\n  b: 1\n";

        JobEdit.Set(text, JobPath.Parse("a.condition"), JobValue.ListOf("sound", "light rust")).Text
            .ShouldBe("a:\n  condition: [sound, light rust] # why\n\n  b: 1\n");
    }

    [Theory]
    [InlineData("a:\nb: 1\n", "a", "a: 5\nb: 1\n")]
    [InlineData("a: # c\nb: 1\n", "a", "a: 5 # c\nb: 1\n")]
    [InlineData("a: |\n  x\n  y\n\n# c\nb: 1\n", "a", "a: 5\n\n# c\nb: 1\n")]
    [InlineData("a: 'it''s'\n", "a", "a: \"5\"\n")]
    [InlineData("a: {b: , c: 1}", "a.b", "a: {b: 5, c: 1}")]
    [InlineData("a: null # c\n", "a.b", "a: {b: 5} # c\n")]
    [InlineData("{\"a\": \"x\", \"b\": [1]}", "a", "{\"a\": 5, \"b\": [1]}")]
    [InlineData("{\n  \"a\": \"x\"\n}\n", "b", "{\n  \"a\": \"x\",\n  \"b\": 5\n}\n")]
    [InlineData("{}", "b", "{\"b\": 5}")]
    [InlineData("a: 1", "b", "a: 1\nb: 5")]
    [InlineData("a: 1\r\nc: 2", "b", "a: 1\r\nc: 2\r\nb: 5")]
    public void Odd_places_are_edited_too(string text, string path, string after)
    {
        var edit = JobEdit.Set(text, JobPath.Parse(path), JobValue.Of("5"));

        edit.Text.ShouldBe(after);
    }

    [Theory]
    [InlineData("surfaces[0].stays", "    stays: true\n", "")]
    [InlineData("surfaces[0].name", "name: Inner fender\n    count: 2", "count: 2")]
    [InlineData("products.black.package.price", "{net: 12 oz, price: 9.50}", "{net: 12 oz}")]
    [InlineData("products.black.package.net", "{net: 12 oz, price: 9.50}", "{price: 9.50}")]
    [InlineData("surfaces[0].mask[0]", "[{what: wiring loom, kind: wiring, edge: 6 ft}]", "[]")]
    [InlineData("finish-by", "finish-by: 2027-05-16 20:00\n", "")]
    [InlineData("place.weather", "  weather:\n    daily: {low: 54 °F, high: 74 °F, dew-point: 46 °F}\n", "")]
    [InlineData("crew.hours.Fri", "    Fri: 16:00-21:00\n", "")]
    [InlineData("place.weather.daily", "daily: {low: 54 °F, high: 74 °F, dew-point: 46 °F}", "{}")]
    public void A_key_or_an_item_is_removed_and_nothing_else_changes(string path, string before, string after) =>
        JobEdit.Remove(JobFiles.Complete, JobPath.Parse(path)).Text.ShouldBe(Once(JobFiles.Complete, before, after));

    [Fact]
    public void Surfaces_are_added_copied_moved_and_removed()
    {
        const string text = "surfaces: # what is refinished\n  # the tray\n  - name: Tray # rusty\n    area: 1 ft2\n\n  # the rail\n  - {name: Rail, area: 2 ft2}\nend: 1\n";
        var list = JobPath.Parse("surfaces");

        JobEdit.Insert(text, list, 1, JobValue.MapOf(("name", "New"), ("area", "3 ft2"))).Text
            .ShouldBe("surfaces: # what is refinished\n  # the tray\n  - name: Tray # rusty\n    area: 1 ft2\n  - name: New\n    area: 3 ft2\n\n  # the rail\n  - {name: Rail, area: 2 ft2}\nend: 1\n");
        JobEdit.Insert(text, list, 2, JobValue.MapOf(("name", "New"))).Text.ShouldEndWith("  - {name: Rail, area: 2 ft2}\n  - name: New\nend: 1\n");
        JobEdit.Copy(text, list, 0).Text
            .ShouldBe("surfaces: # what is refinished\n  # the tray\n  - name: Tray # rusty\n    area: 1 ft2\n  - name: Tray # rusty\n    area: 1 ft2\n\n  # the rail\n  - {name: Rail, area: 2 ft2}\nend: 1\n");
        JobEdit.Remove(text, list.At(0)).Text
            .ShouldBe("surfaces: # what is refinished\n  # the tray\n\n  # the rail\n  - {name: Rail, area: 2 ft2}\nend: 1\n");
        JobEdit.Move(text, list, 0, 1).Text
            .ShouldBe("surfaces: # what is refinished\n  # the rail\n  - {name: Rail, area: 2 ft2}\n\n  # the tray\n  - name: Tray # rusty\n    area: 1 ft2\nend: 1\n");
        var last = JobEdit.Remove(JobEdit.Remove(text, list.At(1)).Text!, list.At(0)).Text!;
        last.ShouldBe("surfaces: [] # what is refinished\n\n  # the rail\nend: 1\n");
        JobEdit.Insert(last, list, 0, JobValue.MapOf(("name", "New"))).Text.ShouldBe("surfaces: [{name: New}] # what is refinished\n\n  # the rail\nend: 1\n");
    }

    [Fact]
    public void Json_stays_json()
    {
        const string text = "{\n  \"surfaces\": [\n    {\"name\": \"A\"},\n    {\"name\": \"B\"}\n  ]\n}\n";
        var list = JobPath.Parse("surfaces");

        string added = JobEdit.Insert(text, list, 2, JobValue.MapOf(("name", "C"), ("count", "2"))).Text!;
        added.ShouldBe("{\n  \"surfaces\": [\n    {\"name\": \"A\"},\n    {\"name\": \"B\"},\n    {\"name\": \"C\", \"count\": 2}\n  ]\n}\n");
        JobEdit.Move(text, list, 0, 1).Text.ShouldBe("{\n  \"surfaces\": [\n    {\"name\": \"B\"},\n    {\"name\": \"A\"}\n  ]\n}\n");
        JobEdit.Copy(text, list, 0).Text.ShouldBe("{\n  \"surfaces\": [\n    {\"name\": \"A\"},\n    {\"name\": \"A\"},\n    {\"name\": \"B\"}\n  ]\n}\n");
        using var json = System.Text.Json.JsonDocument.Parse(JobEdit.Set(added, JobPath.Parse("surfaces[2].condition"), JobValue.ListOf("a\"b", "true")).Text!);
        json.RootElement.GetProperty("surfaces")[2].GetProperty("condition")[0].GetString().ShouldBe("a\"b");
    }

    [Theory]
    [InlineData("a: &x 1\nb: *x\n", "a")]
    [InlineData("a: &x {c: 1}\nb: *x\n", "b.c")]
    [InlineData("a: &x {c: 1}\nb: *x\n", "a.c")]
    [InlineData("a: 1\n", "a.b.c")]
    [InlineData("a: [1]\n", "a[3]")]
    public void What_is_shared_or_not_there_is_not_edited(string text, string path)
    {
        var edit = JobEdit.Set(text, JobPath.Parse(path), JobValue.Of("2"));

        edit.Text.ShouldBeNull();
        edit.Problems.ShouldHaveSingleItem().Code.ShouldBe("not-editable");
    }

    [Fact]
    public void A_text_that_is_no_yaml_is_not_edited() =>
        JobEdit.Set("a: [1\n", JobPath.Parse("a"), JobValue.Of("2")).Problems.ShouldHaveSingleItem().Code.ShouldBe("not-yaml");

    [Fact]
    public void A_byte_order_mark_stays() =>
        JobEdit.Set("\uFEFFa: 1\r\n", JobPath.Parse("a"), JobValue.Of("2")).Text.ShouldBe("\uFEFFa: 2\r\n");

    [Fact]
    public void Values_of_every_file_can_be_set_there_and_back()
    {
        foreach (string text in Texts)
        {
            int step = text.Length > 5000 ? 3 : 1;
            foreach (var (path, node, at) in Scalars(text).Where((_, i) => i % step == 0))
            {
                var edit = JobEdit.Set(text, path, JobValue.Of("xyz 1"));
                edit.Problems.ShouldBeEmpty(path.ToString());
                string edited = edit.Text!;
                string tail = text[at.End..];
                edited.ShouldStartWith(text[..at.Start]);
                if (!node.IsBlock && !(node.IsPlain && node.Text.Contains(' ', StringComparison.Ordinal) && text[at.Start..at.End] != node.Text)) edited.EndsWith(tail, StringComparison.Ordinal).ShouldBeTrue(path.ToString());
                bool isAsWritten = node.IsPlain && text[at.Start..at.End] == node.Text;
                if (isAsWritten && !text.StartsWith('{')) JobEdit.Set(edited, path, JobValue.Of(node.Text)).Text.ShouldBe(text, path.ToString());
            }
        }
    }

    [Fact]
    public void Every_list_can_be_reordered_there_and_back()
    {
        foreach (string text in Texts)
        {
            foreach (var (path, list) in Lists(text).Where(found => found.List.Items.Length > 1))
            {
                int last = list.Items.Length - 1;
                var moved = JobEdit.Move(text, path, 0, last);
                moved.Problems.ShouldBeEmpty(path.ToString());
                var back = JobEdit.Move(moved.Text!, path, last, 0);
                back.Text!.TrimEnd().ShouldBe(text.TrimEnd(), path.ToString());
                var copied = JobEdit.Copy(text, path, last);
                copied.Problems.ShouldBeEmpty(path.ToString());
                JobEdit.Remove(copied.Text!, path.At(last + 1)).Text!.TrimEnd().ShouldBe(text.TrimEnd(), path.ToString());
                JobEdit.Insert(text, path, 1, JobValue.MapOf(("a", "b"), ("c", "d: e"))).Problems.ShouldBeEmpty(path.ToString());
            }
        }
    }

    [Fact]
    public void Any_text_can_be_set_as_a_value()
    {
        var any = Gen.OneOf(Gen.String[Gen.Char['\u0020', '\uD7FF'], 0, 20], Gen.OneOf("", " ", "- a", "a: b", "#", "a #b", "null", "~", "it's", "\"", "a\nb", "\t", "😀", "-", "--- x", "[", "é", "1,2", "true", "? x", "&a", "*a", "!t", "%a", "@", "`", "a:", "|", "..."));

        Gen.Select(any, Gen.Int[0, Texts.Length - 1], Gen.Int[0, 10_000]).Sample((value, which, pick) =>
        {
            string text = Texts[which];
            var scalars = Scalars(text);
            var path = scalars[pick % scalars.Length].Path;

            var edit = JobEdit.Set(text, path, JobValue.Of(value));

            bool hasControl = value.Any(c => char.IsControl(c) && c is not ('\n' or '\t' or '\r'));
            if (!hasControl) edit.Problems.ShouldBeEmpty();
            if (edit.Text is not null) Scalars(edit.Text).Single(found => found.Path == path).Node.Text.ShouldBe(value);
        }, iter: 60);
    }

    private static string Once(string text, string before, string after)
    {
        int at = text.IndexOf(before, StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0, before);
        return text[..at] + after + text[(at + before.Length)..];
    }

    private static ImmutableArray<(JobPath Path, TextNode Node, Stretch At)> Scalars(string text)
    {
        var found = ImmutableArray.CreateBuilder<(JobPath, TextNode, Stretch)>();
        Visit(Root(text), JobPath.Root, default, (path, node, at) =>
        {
            if (node is TextNode scalar) found.Add((path, scalar, at));
        });
        return found.ToImmutable();
    }

    private static ImmutableArray<(JobPath Path, ListNode List)> Lists(string text)
    {
        var found = ImmutableArray.CreateBuilder<(JobPath, ListNode)>();
        Visit(Root(text), JobPath.Root, default, (path, node, _) =>
        {
            if (node is ListNode list) found.Add((path, list));
        });
        return found.ToImmutable();
    }

    private static void Visit(Node node, JobPath path, Stretch at, Action<JobPath, Node, Stretch> see)
    {
        see(path, node, at);
        if (node is MapNode map)
        {
            foreach (var entry in map.Entries) Visit(entry.Value, path.Key(entry.Key.Text), entry.At, see);
        }
        else if (node is ListNode list)
        {
            for (int i = 0; i < list.Items.Length; i++) Visit(list.Items[i], path.At(i), list.Places[i], see);
        }
    }

    private static Node Root(string text)
    {
        var problems = new ProblemList("x");
        var root = YamlText.Read(text, problems);
        problems.InOrder().ShouldBeEmpty();
        return root!;
    }
}
