using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Tests.Properties;

/// <summary>The reader takes every job that is drawn.</summary>
public class DrawnJobReading
{
    [Fact]
    public void Every_drawn_job_is_read_without_a_problem()
    {
        var catalogue = BuiltInPresets.Read();
        foreach (var (seed, job) in Draws.Jobs(300))
        {
            var reading = JobReader.Read(job.Text(), "drawn.job.yaml", catalogue.Vocabulary);

            reading.Problems.ShouldBeEmpty($"seed {seed}\n{job}");
            Labels.Resolve(reading.Job!, catalogue, "drawn.job.yaml").Problems.ShouldBeEmpty($"seed {seed}\n{job}");
        }
    }

    [Fact]
    public void A_job_with_every_word_is_read_without_a_problem()
    {
        string text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "jobs", "every-word.job.yaml"));
        var catalogue = BuiltInPresets.Read();

        var reading = JobReader.Read(text, "every-word.job.yaml", catalogue.Vocabulary);

        reading.Problems.ShouldBeEmpty();
        Labels.Resolve(reading.Job!, catalogue, "every-word.job.yaml").Problems.ShouldBeEmpty();
    }
}
