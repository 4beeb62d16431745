using CoatPlan.Jobs;
using CsCheck;

namespace CoatPlan.Tests.Jobs;

public sealed class JobReaderProperties
{
    private static readonly string[] Odd =
        ["", " ", "\n", "\t", ":", "- ", "[", "]", "{", "}", ",", "\"", "'", "&a ", "*a", "|", "#", "null", "true", "0", "-1", "1e999", "8 ft2", "°", "é", "😀", "none", "16:00-21:00", "2027-02-30", "\u0000", "less: [{}]"];

    [Fact]
    public void Whatever_is_broken_in_a_job_it_reads_or_says_why()
    {
        var pick = Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, 12], Gen.Int[0, Odd.Length - 1]);

        Gen.Select(Gen.Bool, pick.Array[1, 4]).Sample((full, breaks) =>
        {
            string text = full ? JobFiles.EveryKey : JobFiles.Complete;
            foreach (var (at, length, odd) in breaks)
            {
                int start = at % text.Length;
                text = text[..start] + Odd[odd] + text[Math.Min(text.Length, start + length)..];
            }

            Holds(text);
        }, iter: 300);
    }

    [Fact]
    public void Whatever_the_values_are_it_reads_or_says_why()
    {
        string[] lines = JobFiles.EveryKey.Split('\n');

        Gen.Select(Gen.Int[0, lines.Length - 1], Gen.Int[0, lines.Length - 1], Gen.Int[0, Odd.Length - 1]).Sample((line, other, odd) =>
        {
            string[] broken = [.. lines];
            int colon = broken[line].IndexOf(": ", StringComparison.Ordinal);
            if (colon > 0) broken[line] = broken[line][..(colon + 2)] + Odd[odd];
            broken[other] = "";
            Holds(string.Join('\n', broken));
        }, iter: 200);
    }

    [Fact]
    public void Json_reads_as_the_same_job()
    {
        var yaml = JobReader.Read(JobFiles.EveryKey, "x", Vocabulary.Contract);
        var json = JobReader.Read(JobFiles.EveryKeyAsJson, "x", Vocabulary.Contract);

        json.Problems.ShouldBeEmpty();
        json.Job!.Surfaces.Select(surface => surface.Id).ShouldBe(yaml.Job!.Surfaces.Select(surface => surface.Id));
        json.Job.Products[0].Label.Times.ShouldBe(yaml.Job.Products[0].Label.Times);
    }

    [Fact]
    public void Every_example_reads()
    {
        JobFiles.Examples.Length.ShouldBeGreaterThan(2);
        foreach (string text in JobFiles.Examples) JobReader.Read(text, "x", Vocabulary.Contract).Problems.ShouldBeEmpty();
    }

    [Fact]
    public void What_is_taken_from_a_shape_is_sized_as_areas_are_measured()
    {
        var job = JobReader.Read(JobFiles.EveryKey, "x", Vocabulary.Contract).Job!;

        foreach (var shape in job.Surfaces.SelectMany(surface => surface.Shapes))
        {
            CoatPlan.Jobs.Reading.ShapeSize.SquareMetres(shape).ShouldBe(CoatPlan.Areas.ShapeArea.Of(shape).SquareMeters, 1e-9);
        }
    }

    private static void Holds(string text)
    {
        var reading = JobReader.Read(text, "x.job.yaml", Vocabulary.Contract);
        (reading.Job is null).ShouldBe(!reading.Problems.IsEmpty);
        int lines = text.Split('\n').Length + 1;
        foreach (var problem in reading.Problems)
        {
            problem.Line.ShouldBeInRange(1, lines);
            problem.Column.ShouldBeGreaterThan(0);
            problem.ToString().ShouldNotContain('\n');
        }
    }
}
