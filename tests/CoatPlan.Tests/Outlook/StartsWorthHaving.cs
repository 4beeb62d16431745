namespace CoatPlan.Tests.Outlook;

public class StartsWorthHaving
{
    private static readonly LocalDateTime Friday = new(2027, 5, 14, 8, 0);

    private const string Cold = """
        coatplan: 1
        job: After the cold
        start: 2027-05-10 08:00
        place: {volume: 4000 ft3, exhaust: 800 cfm, weather: {hours: cold.csv}}
        crew: {people: 1, hours: {Mon-Sun: 08:00-18:00}}
        products:
          black: {preset: underhood-black-aerosol}
        systems: {s: [{product: black, coats: 2}]}
        surfaces:
          - {name: Bracket, material: steel, finish: factory paint, area: 1 ft2, system: s}

        """;

    // Five cold days, then warm ones to the end of the file on 18 May.
    private static readonly string Forecast = "time,air °F,humidity %\n" + string.Concat(
        Enumerable.Range(0, 9 * 24).Select(hour => $"{new LocalDateTime(2027, 5, 10, 0, 0).PlusHours(hour):uuuu-MM-dd HH:mm},{(hour < 5 * 24 ? 35 : 72)},45\n"));

    [Fact]
    public void One_that_is_beaten_in_everything_is_dominated_and_a_trade_is_not()
    {
        var early = new StartTime(Friday, Friday.PlusHours(30), true, 4, 3);

        early.IsDominatedBy(early with { Start = Friday.PlusHours(1) }).ShouldBeTrue();
        early.IsDominatedBy(early with { Start = Friday.PlusHours(1), Finish = Friday.PlusHours(31) }).ShouldBeFalse();
        early.IsDominatedBy(early with { Start = Friday.PlusHours(1), LeastMarginC = 3.9 }).ShouldBeFalse();
        early.IsDominatedBy(early).ShouldBeFalse();
    }

    [Fact]
    public void Starts_in_a_forecast_stay_within_it_and_wait_out_the_cold()
    {
        var starts = StartTimes.Of(Ready(Cold, Forecast));

        starts.ShouldNotBeEmpty();
        starts.ShouldAllBe(start => start.Start < new LocalDateTime(2027, 5, 18, 23, 0) && start.Finish > new LocalDateTime(2027, 5, 15, 0, 0));
        starts[0].Finish.ShouldBe(starts.Min(start => start.Finish));
        starts.ShouldAllBe(start => start.LeastMarginC > 0);
    }

    [Fact]
    public void What_another_start_beats_in_everything_is_left_out()
    {
        var starts = StartTimes.Of(Ready(Cold, Forecast));

        starts.Skip(3).Where(start => starts.Any(start.IsDominatedBy)).ShouldBeEmpty();
    }

    [Fact]
    public void A_job_that_has_begun_keeps_its_start_and_moves_the_moment_it_goes_on()
    {
        var begun = Cold.Replace("start: 2027-05-10 08:00", "start: 2027-05-10 08:00\nas-of: 2027-05-15 08:00", StringComparison.Ordinal)
            + "done: [{operation: photograph, at: 2027-05-10 09:00}]\n";

        var starts = StartTimes.Of(Ready(begun, Forecast));

        starts.ShouldNotBeEmpty();
        starts.ShouldAllBe(start => start.Start >= new LocalDateTime(2027, 5, 15, 8, 0));
    }

    [Fact]
    public void A_cancelled_question_stops()
    {
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();

        Should.Throw<OperationCanceledException>(() => StartTimes.Of(Ready(Cold, Forecast), null, cancel.Token));
    }

    internal static ReadyJob Ready(string text, string? forecast = null) =>
        JobIntake.Read(text, "a.job.yaml", Trade.Standard, _ => forecast is null ? FileText.Unreadable("none") : FileText.Of(forecast)).Ready!;
}
