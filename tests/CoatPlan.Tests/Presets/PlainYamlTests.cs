using CoatPlan.Jobs.Yaml;
using CoatPlan.Presets;
using CoatPlan.Problems;
using CsCheck;

namespace CoatPlan.Tests.Presets;

public sealed class PlainYamlTests
{
    [Fact]
    public void The_quick_reader_sees_in_every_built_in_file_what_the_full_one_sees()
    {
        foreach (var preset in BuiltInPresets.Texts.Where(text => !RuleFiles.Holds(text)))
        {
            Same(PlainYaml.Read(preset.Text), Full(preset.Text).Root).ShouldBeTrue(preset.Name);
        }
    }

    [Theory]
    [InlineData("a: 1\nb: {c: d, e: [f, g h, 'i''j']}\n")]
    [InlineData("a:\n  b: x # why\n  # more\n  c: y\nd: -4 °C\n")]
    [InlineData("a: {b: c,\n  d: e}\n\n# end")]
    [InlineData("'a b': c\nVM&P: d:e\n")]
    [InlineData("a: []\nb: {}\n")]
    public void What_is_plain_is_read(string text)
    {
        var quick = PlainYaml.Read(text);

        quick.ShouldNotBeNull();
        Same(quick, Full(text).Root).ShouldBeTrue();
    }

    [Theory]
    [InlineData("")]
    [InlineData("a: 1\na: 2\n")]
    [InlineData("a:\n- b\n")]
    [InlineData("a: \"b\"\n")]
    [InlineData("a: &x b\n")]
    [InlineData("a: |\n  b\n")]
    [InlineData("a: b\n  c\n")]
    [InlineData("a: {b: c\n")]
    [InlineData("a: [b\n c]\n")]
    [InlineData("---\na: b\n")]
    [InlineData("a: b: c\n")]
    [InlineData("a:\tb\n")]
    [InlineData("a: b\r\n")]
    [InlineData("  a: b\n c: d\n")]
    [InlineData("a: {b: c} d\n")]
    [InlineData("a:\n")]
    public void What_is_more_than_plain_or_wrong_is_left_to_the_full_reader(string text) => PlainYaml.Read(text).ShouldBeNull();

    // Whatever the quick reader takes, the full one takes as well, and both see the same.
    [Fact]
    public void The_two_readers_never_disagree() =>
        Gen.String[Gen.Char["ab:: {}[],,' #\n\n-?&\""], 0, 40].Sample(
            text =>
            {
                if (PlainYaml.Read(text) is not { } quick) return;
                var (root, problems) = Full(text);
                problems.ShouldBe(0);
                Same(quick, root).ShouldBeTrue();
            },
            iter: 20_000);

    [Fact]
    public void The_two_readers_agree_on_what_looks_like_presets() =>
        Maps(3).Sample(
            lines =>
            {
                string text = "t:\n" + lines;
                var quick = PlainYaml.Read(text).ShouldNotBeNull(text);
                Same(quick, Full(text).Root).ShouldBeTrue(text);
            },
            iter: 2_000);

    private static Gen<string> Maps(int depth)
    {
        string[] words = ["a", "b c", "4 °F", "x-y", "5 %", "'q, r'", "VM&P", "-3 mm"];
        var word = Gen.Int[0, words.Length - 1].Select(i => words[i]);
        var value = word;
        for (int level = 0; level < depth; level++)
        {
            var inner = value;
            value = Gen.OneOf(
                word,
                inner.Array[0, 3].Select(items => $"[{string.Join(", ", items)}]"),
                inner.Array[0, 3].Select(items => "{" + string.Join(", ", items.Select((item, i) => $"k{i}: {item}")) + "}"));
        }

        return value.Array[1, 4].Select(values => string.Concat(values.Select((one, i) => $"  key {i}: {one} # c\n")));
    }

    private static (Node? Root, int Problems) Full(string text)
    {
        var problems = new ProblemList(null);
        var root = YamlText.Read(text, problems);
        return (root, problems.Count);
    }

    private static bool Same(Node? a, Node? b) => (a, b) switch
    {
        (TextNode x, TextNode y) => x.Mark == y.Mark && x.Text == y.Text && x.IsPlain == y.IsPlain && x.Start == y.Start && x.End == y.End,
        (ListNode x, ListNode y) => Alike(x, y) && x.IsFlow == y.IsFlow && x.Items.Length == y.Items.Length
            && x.Items.Zip(y.Items).All(pair => Same(pair.First, pair.Second)),
        (MapNode x, MapNode y) => Alike(x, y) && x.IsFlow == y.IsFlow && x.Entries.Length == y.Entries.Length
            && x.Entries.Zip(y.Entries).All(pair => Same(pair.First.Key, pair.Second.Key) && Same(pair.First.Value, pair.Second.Value)),
        _ => false,
    };

    private static bool Alike(Node a, Node b) => a.Mark == b.Mark && a.Start == b.Start && a.Size == b.Size && a.Height == b.Height;
}
