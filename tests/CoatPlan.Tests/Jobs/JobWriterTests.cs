using CoatPlan.Jobs;
using CsCheck;

namespace CoatPlan.Tests.Jobs;

public sealed class JobWriterTests
{
    [Fact]
    public void A_new_job_reads()
    {
        var names = Gen.OneOf("Engine bay", "Van: left side", "# 7", "null", "\"quoted\"", "1", "Réservoir", "a\nb");
        var answers = Gen.Select(names, Gen.Bool, Gen.Bool, Gen.Int[1, 6], (name, metric, outdoors, stations) => new JobAnswers
        {
            Name = name, Start = new(2027, 5, 14, 16, 0), Units = metric ? PrintUnits.Metric : PrintUnits.Us, Outdoors = outdoors, Stations = stations,
        });

        answers.Sample(given =>
        {
            var reading = JobReader.Read(JobWriter.New(given), "new.job.yaml", Vocabulary.Contract);
            reading.Problems.ShouldBeEmpty();
            var job = reading.Job!;
            (job.Name, job.Units, job.Place.Outdoors, job.Crew.Stations, job.Start).ShouldBe((given.Name, given.Units, given.Outdoors, given.Stations, given.Start));
        }, iter: 100);
    }

    [Fact]
    public void A_name_that_is_blank_is_the_callers_mistake() =>
        Should.Throw<ArgumentException>(() => JobWriter.New(new() { Name = " ", Start = new(2027, 5, 14, 16, 0) }));
}
