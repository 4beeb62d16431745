using CoatPlan.Jobs.Yaml;
using CoatPlan.Problems;
using CsCheck;

namespace CoatPlan.Tests.Jobs;

public sealed class YamlTextTests
{
    [Fact]
    public void Nodes_know_where_they_stand()
    {
        var root = (MapNode)Read("a: 1\r\nb:\r\n  - x: \"q\"\r\n  - {p: 1}\r\n", out _)!;

        var list = (ListNode)root.Find("b")!.Value;
        var first = ((MapNode)list.Items[0]).Find("x")!.Value;
        first.Mark.ShouldBe(new Mark(3, 8));
        ((TextNode)first).Text.ShouldBe("q");
        var second = (MapNode)list.Items[1];
        second.IsFlow.ShouldBeTrue();
        second.Find("p")!.Value.Mark.ShouldBe(new Mark(4, 9));
    }

    [Fact]
    public void Json_is_yaml()
    {
        var root = (MapNode)Read("{\n\t\"a\": 1,\n\t\"b\": [\"x\", {\"c\": true}]\n}", out var problems)!;

        problems.ShouldBeEmpty();
        root.Entries.Select(entry => entry.Key.Text).ShouldBe(["a", "b"]);
    }

    [Theory]
    [InlineData("a: 1\nb: 2\na: 3\n", 3, 1, "repeated-key")]
    [InlineData("a: {x: 1, x: 2}\n", 1, 11, "repeated-key")]
    [InlineData("a:\n\t- b\n", 2, 1, "tab")]
    [InlineData("a: 1\nb:\n  c: 2\n\td: 3\n", 4, 1, "tab")]
    [InlineData("a: \"x\nb: 1\n", 1, 4, "not-yaml")]
    [InlineData("a: [1, 2\nb: 1\n", 1, 4, "not-yaml")]
    [InlineData("a: b: c\n", 1, 5, "not-yaml")]
    [InlineData("a: @b\n", 1, 4, "not-yaml")]
    [InlineData("a: 1\n---\nb: 1\n", 2, 1, "several-documents")]
    [InlineData("a: 1\n---\na: 1\n", 2, 1, "several-documents")]
    [InlineData("a: *b\n", 1, 4, "unknown-alias")]
    [InlineData("a: &a [1, *a]\n", 1, 11, "cycle")]
    [InlineData("a: &a\n  b: *a\n", 2, 6, "cycle")]
    [InlineData("a: !secret x\n", 1, 4, "tag")]
    [InlineData("? [1, 2]\n: b\n", 1, 3, "key-not-text")]
    [InlineData("a: 1\nb: \u0000\n", 2, 4, "binary")]
    [InlineData("a: \u001b[31m\n", 1, 4, "binary")]
    public void What_is_no_yaml_is_told_with_its_place(string text, int line, int column, string code)
    {
        Read(text, out var problems);

        var problem = problems.ShouldHaveSingleItem();
        (problem.Line, problem.Column, problem.Code).ShouldBe((line, column, code));
    }

    [Fact]
    public void Aliases_repeat_a_value()
    {
        var root = (MapNode)Read("a: &x {p: 1}\nb: *x\n", out var problems)!;

        problems.ShouldBeEmpty();
        root.Find("b")!.Value.ShouldBeSameAs(root.Find("a")!.Value);
    }

    [Fact]
    public void An_alias_bomb_is_refused()
    {
        string bomb = "a: &a [x, x, x, x, x, x, x, x, x]\n";
        for (char c = 'b'; c <= 'k'; c++)
        {
            string before = $"*{(char)(c - 1)}";
            bomb += $"{c}: &{c} [{string.Join(", ", Enumerable.Repeat(before, 9))}]\n";
        }

        Read(bomb, out var problems).ShouldBeNull();

        problems.ShouldHaveSingleItem().Code.ShouldBe("too-many-values");
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a: ")]
    [InlineData("- ")]
    public void Deep_nesting_is_refused(string level)
    {
        Read(string.Concat(Enumerable.Repeat(level, 100_000)), out var problems).ShouldBeNull();

        problems.ShouldHaveSingleItem().Code.ShouldBe("too-deep");
    }

    [Fact]
    public void A_text_over_the_limit_is_refused()
    {
        Read(new string('#', YamlLimits.Bytes + 1), out var problems).ShouldBeNull();

        problems.ShouldHaveSingleItem().Code.ShouldBe("too-large");
    }

    [Fact]
    public void No_text_makes_it_throw()
    {
        var parts = Gen.OneOf("a", ": ", "- ", "\n", "  ", "[", "]", "{", "}", ",", "\"", "'", "&x ", "*x", "|\n", ">\n", "#", "? ", "!t ", "---\n",
            "...\n", "%YAML 1.2\n", "\t", "\r", "é", "😀", "<<: ", "\u0085", "\\", "`", "@", "null", "~", "\uFEFF", "!", "&", "*", "|2\n", ">-\n", "!<", "%");
        var text = Gen.OneOf(Gen.String, parts.Array[0, 30].Select(string.Concat));

        text.Sample(t => { Read(t, out _); }, iter: 4_000);
    }

    private static Node? Read(string text, out ImmutableArray<Problem> problems)
    {
        var list = new ProblemList("x.job.yaml");
        var root = YamlText.Read(text, list);
        problems = list.InOrder();
        return root;
    }
}
