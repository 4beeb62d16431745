using CoatPlan.Jobs.Reading;
using CoatPlan.Tests.Jobs;
using CoatPlan.Timetable;

namespace CoatPlan.Tests.Docs;

/// <summary>What the reference says holds where a key is not there, holds: the plan is the same with the key written out.</summary>
public sealed class DefaultsOfTheJobFile
{
    private static readonly string Usual = PlanOf(JobFiles.Complete);

    [Theory]
    [InlineData("units", "job: Roadster engine bay\n", "job: Roadster engine bay\nunits: {0}\n")]
    [InlineData("reserve", "job: Roadster engine bay\n", "job: Roadster engine bay\nreserve: {0}\n")]
    [InlineData("tape-limit", "job: Roadster engine bay\n", "job: Roadster engine bay\ntape-limit: {0}\n")]
    [InlineData("mixing", "  exhaust:", "  mixing: {0}\n  exhaust:")]
    [InlineData("spray-spots", "  exhaust:", "  spray-spots: {0}\n  exhaust:")]
    [InlineData("stations", "  people: 1", "  people: 1\n  stations: {0}")]
    [InlineData("set-up", "  people: 1", "  people: 1\n  set-up: {0}")]
    [InlineData("put-away", "  people: 1", "  people: 1\n  put-away: {0}")]
    [InlineData("missed", "    covers: 13 ft2", "    covers: 13 ft2\n    missed: {0}")]
    [InlineData("mist", "{product: etch, coats: 1}", "{product: etch, coats: 1, mist: {0}}")]
    [InlineData("form", "    area: 8 ft2\n", "    area: 8 ft2\n    form: {0}\n")]
    [InlineData("faces", "    area: 8 ft2\n", "    area: 8 ft2\n    faces: {0}\n")]
    [InlineData("count", "  - name: Battery tray\n", "  - name: Battery tray\n    count: {0}\n")]
    [InlineData("stays", "  - name: Battery tray\n", "  - name: Battery tray\n    stays: {0}\n")]
    public void The_plan_is_the_same_with_the_default_written_out(string key, string where, string with)
    {
        var unless = Tables().SelectMany(table => table.Keys).Where(spec => spec.Name == key && spec.Unless.StartsWith('`')).Select(spec => spec.Unless.Trim('`')).Distinct().ShouldHaveSingleItem();
        JobFiles.Complete.ShouldContain(where);

        PlanOf(JobFiles.Complete.Replace(where, with.Replace("{0}", unless, StringComparison.Ordinal), StringComparison.Ordinal)).ShouldBe(Usual, key);
    }

    private static IEnumerable<KeyTable> Tables() =>
        [JobKeys.Job, JobKeys.Place, JobKeys.Crew, JobKeys.Product, JobKeys.Layer, JobKeys.Surface];

    private static string PlanOf(string text)
    {
        var intake = JobIntake.Read(text, "job", Trade.Standard, _ => FileText.Unreadable("none"));
        return PlanJson.Write(Planner.Plan(intake.Ready.ShouldNotBeNull(string.Join('\n', intake.Problems)), SearchDepth.Quick));
    }
}
