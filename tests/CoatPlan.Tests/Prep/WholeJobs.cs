using CoatPlan.Areas;
using CoatPlan.Cautions;
using CoatPlan.Jobs;
using CoatPlan.Prep;
using CoatPlan.Presets;
using CoatPlan.Tests.Jobs;

namespace CoatPlan.Tests.Prep;

public class WholeJobs
{
    public static TheoryData<string> Examples => [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "presets", "jobs"), "*.job.yaml").Order()];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_job_has_a_sequence(string file) => Check(File.ReadAllText(file));

    [Fact]
    public void A_job_with_every_word_of_the_contract_has_a_sequence() => Check(JobFiles.EveryKey);

    [Fact]
    public void The_complete_job_of_the_reference_has_nothing_to_warn_of_but_its_water_heater() =>
        Check(JobFiles.Complete).Warnings.Select(warning => warning.Code).Distinct().ShouldBe(["ignition"]);

    private static Sequence Check(string text)
    {
        var catalogue = BuiltInPresets.Read();
        var job = JobReader.Read(text, "job", catalogue.Vocabulary).Job!;
        var labels = Labels.Resolve(job, catalogue).Labels!;
        var sequence = PrepSequence.Build(job, catalogue, labels, SurfaceAreas.Measure(job, catalogue), PrepTexts.Standard);

        sequence.Groups.SelectMany(group => group.Surfaces).ShouldBe(job.Surfaces.Select(surface => surface.Id), ignoreOrder: true);
        foreach (var group in sequence.Groups)
            sequence.ForBatch(group.Surfaces, group.Id).Select(operation => operation.Word).ShouldContain("final-wipe");
        CautionsFor.Job(CautionFacts.From(job, labels, sequence), CautionTexts.Standard)[^1].Code.ShouldBe("deferral");
        return sequence;
    }
}
