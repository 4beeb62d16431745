using CoatPlan.Tests.Validator;

namespace CoatPlan.Tests.Properties;

/// <summary>The draws reach what they are meant to reach.</summary>
public class JobGenTests
{
    private static readonly ImmutableArray<string> s_texts = [.. Draws.Jobs(400).Select(draw => draw.Job.Text())];

    [Fact]
    public void Every_word_that_is_drawn_from_turns_up()
    {
        string all = string.Join('\n', s_texts);

        foreach (string word in JobGen.Materials.Concat(JobGen.Finishes).Concat(JobGen.Conditions).Concat(JobGen.Presets).Concat(JobGen.Shapes).Concat(JobGen.Masks))
        {
            all.ShouldContain(word);
        }
    }

    [Theory]
    [InlineData("steady:")]
    [InlineData("daily:")]
    [InlineData("hours: forecast.csv")]
    [InlineData("outdoors: true")]
    [InlineData("heater: open")]
    [InlineData("stations: 2")]
    [InlineData("only: bare")]
    [InlineData("mist: true")]
    [InlineData("within")]
    public void Jobs_of_every_kind_are_drawn(string text)
    {
        s_texts.Count(job => job.Contains(text, StringComparison.Ordinal)).ShouldBeGreaterThan(10);
    }

    [Fact]
    public void The_same_seed_draws_the_same_job()
    {
        Draws.Jobs(5).Select(draw => draw.Job.Text()).ShouldBe(s_texts[..5]);
    }

    [Fact]
    public void The_validator_reads_every_job_that_is_drawn()
    {
        foreach (var (_, job) in Draws.Jobs(400))
        {
            Should.NotThrow(() => JobView.Read(job.Text(), job.Hours));
        }
    }
}
