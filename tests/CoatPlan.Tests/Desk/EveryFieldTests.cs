using System.Text.Json;
using CoatPlan.App.Desk;
using CoatPlan.Jobs;
using CoatPlan.Tests.Commands;

namespace CoatPlan.Tests.Desk;

/// <summary>Walks the job file's own schema and reaches, sets and takes back each of its keys with what a person presses.</summary>
public sealed class EveryFieldTests : IDisposable
{
    private const int DeepestShape = 1;

    private static readonly Dictionary<string, string> NewKeys = new(StringComparer.Ordinal)
    {
        ["hours"] = "Wed", ["products"] = "primer", ["systems"] = "primed", ["have"] = "black", ["consumables"] = "masking tape", ["solvents"] = "acetone",
    };

    // What has no example of its own, or must name something that is there.
    private static readonly Dictionary<string, string> Values = new(StringComparer.Ordinal)
    {
        ["place.weather.hours"] = "forecast.csv", ["finish-by"] = "2027-05-16 20:00", ["dry-film"] = "25 µm", ["film"] = "25 µm", ["gauge"] = "1 mm", ["limits.surface"] = "50 °F", ["ring.inner"] = "4 in", ["surface"] = "bracket", ["surfaces"] = "bracket",
    };

    private readonly TempFolder folder = new();

    private readonly HashSet<string> set = new(StringComparer.Ordinal);

    private readonly JsonElement defs = JsonDocument.Parse(JobSchema.Write()).RootElement.GetProperty("$defs");

    [Fact]
    public void Every_key_of_the_job_file_is_reached_set_and_taken_back()
    {
        folder.File("forecast.csv", "time,air °F,humidity %\n2027-05-14 00:00,60,50\n2027-06-14 00:00,60,50\n");
        var desk = Desks.Of(JobFile.Open(folder.File("bay.job.yaml", Desks.SmallJob)));
        desk.Do(Word.GoFields);

        Visit(desk, "the-job", 0);

        desk.Text.ShouldBe(Desks.SmallJob);
        var keys = defs.EnumerateObject().SelectMany(def => def.Value.GetProperty("properties").EnumerateObject().Select(key => $"{def.Name}/{key.Name}")).ToHashSet(StringComparer.Ordinal);
        keys.Count.ShouldBeGreaterThan(150);
        keys.Except(set).ShouldBeEmpty();
    }

    public void Dispose() => folder.Dispose();

    // A map with known keys: they are those of the schema, and each is set or gone into.
    private void Visit(JobDesk desk, string def, int depth)
    {
        var names = desk.Outline.Rows.Select(row => row.Name).ToArray();
        names.Order().ShouldBe(defs.GetProperty(def).GetProperty("properties").EnumerateObject().Select(key => key.Name).Order(), def);
        for (var at = 0; at < names.Length; at++)
        {
            Choose(desk, at);
            var row = desk.Outline.Rows[at];
            var inner = RefIn(defs.GetProperty(def).GetProperty("properties").GetProperty(row.Name));
            if (row.Kind is OutlineKind.Map or OutlineKind.List)
                Enter(desk, inner, depth);
            else
                Set(desk, row);
            set.Add($"{def}/{row.Name}");
        }
    }

    private void Enter(JobDesk desk, string? def, int depth)
    {
        var before = desk.Text;
        desk.Do(Word.Enter);
        if (desk.Outline.TakesKeys || desk.Outline.TakesItems)
            AddAndVisit(desk, def, depth);
        else
            Visit(desk, def.ShouldNotBeNull(), depth);
        desk.Text.ShouldBe(before);
        desk.Do(Word.Back);
    }

    private void AddAndVisit(JobDesk desk, string? def, int depth)
    {
        var (level, before) = (desk.Outline.Path, desk.Text);
        if (def == "a-shape" && level.Steps.Count(step => step.Key == "less") > DeepestShape)
            return;

        foreach (var kind in def == "a-shape" && level.Steps.All(step => step.Key != "less") ? desk.Outline.TakesItems ? ShapeKinds() : [null] : new string?[] { null })
        {
            desk.Do(Word.Last);
            desk.Do(Word.Add);
            Answer(desk, level, kind);
            desk.Text.ShouldNotBe(before, level.ToString());
            if (desk.Outline.Path.Equals(level) && desk.FieldAt < desk.Outline.Rows.Length && desk.Outline.Rows[desk.FieldAt].Kind is OutlineKind.Map or OutlineKind.List)
                desk.Do(Word.Enter);
            if (desk.Outline.TakesItems && !desk.Outline.Path.Equals(level))
            {
                desk.Do(Word.First);
                desk.Do(Word.Enter);
            }

            if (def is not null && !desk.Outline.Path.Equals(level))
                VisitNew(desk, def, kind, depth);
            while (!desk.Outline.Path.Equals(level))
                desk.Do(Word.Back);
            while (desk.Text != before)
                desk.Do(Word.Undo);
        }
    }

    private void VisitNew(JobDesk desk, string def, string? kind, int depth)
    {
        if (def != "a-shape" || kind is null)
        {
            Visit(desk, def, depth + 1);
            return;
        }

        // Of a shape just the kind that was added is gone into; the other kinds stand beside it.
        Choose(desk, desk.Outline.Rows.Select(row => row.Name).ToList().IndexOf(kind));
        desk.Do(Word.Enter);
        Visit(desk, kind, depth + 1);
        set.Add($"{def}/{kind}");
    }

    private static IEnumerable<string?> ShapeKinds() => ["panel", "disc", "ring", "box", "tube", "cone", "dome", "bend", "channel", "angle"];

    private static void Answer(JobDesk desk, JobPath level, string? kind)
    {
        var named = level.Steps[^1].Key is { } key ? NewKeys.GetValueOrDefault(key) : null;
        for (var question = 0; desk.Typing is not null || desk.Picking is not null; question++)
        {
            question.ShouldBeLessThan(12, $"{level}: {desk.Typing?.Asks ?? desk.Picking?.Asks} {desk.Typing?.Complaint ?? desk.Picking?.Complaint}");
            if (desk.Picking is { } picker)
            {
                if (kind is not null && picker.Rows.Any(row => row.Word == kind))
                    picker.GoTo(picker.Rows.Select(row => row.Word).ToList().IndexOf(kind));
                desk.Do(Word.Enter);
            }
            else
            {
                desk.Take(question == 0 && named is not null ? named : Answered(desk.Typing!, level));
            }
        }
    }

    // What a new piece of a list is asked for is known by the key before the colon, or by the example beside it.
    private static string Answered(LineEdit edit, JobPath level) =>
        Values.TryGetValue($"{level.Steps[^1].Key}.{edit.Asks.Split(':')[0]}", out var inside) ? inside
        : edit.Asks.StartsWith("inner:", StringComparison.Ordinal) ? "4 in"
        : Values.TryGetValue(edit.Asks.Split(':')[0], out var value) ? value
        : edit.Example.Length > 0 ? edit.Example
        : Typed(edit, level.ToString());

    private static void Set(JobDesk desk, OutlineRow row)
    {
        var before = desk.Text;
        desk.Do(Word.Enter);
        if (desk.Picking is { } picker)
        {
            picker.GoTo(picker.Rows.Length - 1);
            if (picker.Several)
                desk.Do(Word.Mark);
            desk.Do(Word.Enter);
            desk.Picking.ShouldBeNull($"{row.Path}: {picker.Complaint}");
        }
        else
        {
            var typed = Typed(desk.Typing.ShouldNotBeNull(row.Path.ToString()), row.Path.ToString());
            desk.Take(typed).ShouldBeTrue($"{row.Path} {typed}: {desk.Typing?.Complaint}");
            desk.Outline.Rows[desk.FieldAt].Values.ShouldContain(typed, row.Path.ToString());
            if (row.IsSet)
                OutsideOfItNothingMoves(before, desk.Text, row.Value, typed);
        }

        desk.Outline.Rows[desk.FieldAt].IsSet.ShouldBeTrue(row.Path.ToString());
        while (desk.Text != before)
            desk.Do(Word.Undo);
    }

    // Quotes may be needed around a value; beyond them every byte is what it was.
    private static void OutsideOfItNothingMoves(string before, string after, string old, string typed)
    {
        var same = 0;
        while (same < Math.Min(before.Length, after.Length) && before[same] == after[same])
            same++;
        var sameAtEnd = 0;
        while (sameAtEnd < Math.Min(before.Length, after.Length) - same && before[^(sameAtEnd + 1)] == after[^(sameAtEnd + 1)])
            sameAtEnd++;
        (before.Length - same - sameAtEnd).ShouldBeLessThanOrEqualTo(old.Length + 2);
        (after.Length - same - sameAtEnd).ShouldBeLessThanOrEqualTo(typed.Length + 2);
    }

    private static string Typed(LineEdit edit, string path) =>
        Values.TryGetValue(path, out var whole) ? whole
        : Values.TryGetValue(string.Join('.', path.Split('.').TakeLast(2)), out var inside) ? inside
        : Values.TryGetValue(path.Split('.')[^1], out var last) ? last
        : edit.Example.Length > 0 ? edit.Example
        : edit.Typed.Length > 0 ? edit.Typed
        : "words";

    private static void Choose(JobDesk desk, int at)
    {
        desk.Do(Word.First);
        for (var down = 0; down < at; down++)
            desk.Do(Word.Down);
    }

    private static string? RefIn(JsonElement element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                if (element.TryGetProperty("$ref", out var found))
                    return found.GetString()!.Split('/')[^1];
                return element.EnumerateObject().Select(each => RefIn(each.Value)).FirstOrDefault(inner => inner is not null);
            case JsonValueKind.Array:
                return element.EnumerateArray().Select(RefIn).FirstOrDefault(inner => inner is not null);
            default:
                return null;
        }
    }
}
