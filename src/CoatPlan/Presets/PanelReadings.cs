using CoatPlan.Jobs;
using UnitsNet;

namespace CoatPlan.Presets;

/// <summary>Feeds what a test panel gave back into a label.</summary>
/// <remarks>
/// Coverage is area × coats ÷ what was used × the package, the loss on a flat panel in it. Film is that of all coats over their number. A measured time is brought
/// to the label's temperature by its own factor for 10 K; where it is longer than the label's, that stage waits longer in the same proportion, in the label's
/// table too. Where it is shorter the label's time stays: the label wins.
/// </remarks>
internal static class PanelReadings
{
    private static readonly TemperatureDelta TenKelvin = TemperatureDelta.FromKelvins(10);

    /// <summary>The label with the figures of its panels; of two panels the later one counts.</summary>
    /// <param name="label">The label.</param>
    /// <param name="panels">The panels of the job.</param>
    public static Label Over(Label label, ImmutableArray<TestPanel> panels) =>
        panels.Where(panel => panel.Product == label.Key).Aggregate(label, Over);

    private static Label Over(Label label, TestPanel panel)
    {
        var origins = label.Origins.ToBuilder();
        var covers = Covers(label, panel);
        if (covers is not null) origins["covers"] = Origin.Panel;
        if (panel.Film is not null) origins["dry-film"] = Origin.Panel;
        if (panel.HidesAfter is not null) origins["hiding"] = Origin.Panel;
        var slower = panel.Times is { } times ? Slower(label, times, panel.Air ?? label.AtAir) : null;
        if (slower is not null) origins["times"] = Origin.Panel;
        return label with
        {
            Covers = covers ?? label.Covers,
            DryFilm = panel.Film is { } film ? film / panel.Coats : label.DryFilm,
            HidesAfter = panel.HidesAfter ?? label.HidesAfter,
            MustHide = label.MustHide || panel.HidesAfter is not null,
            Times = slower is null ? label.Times : Longer(label.Times, slower),
            TimesAt = slower is null ? label.TimesAt : [.. label.TimesAt.Select(row => row with { Times = Longer(row.Times, slower) })],
            Origins = origins.ToImmutable(),
        };
    }

    private static Area? Covers(Label label, TestPanel panel)
    {
        double? packages = panel.Used switch
        {
            { Mass: { } mass } when label.NetMass is { } net => mass / net,
            { Volume: { } volume } when label.NetVolume is { } net => volume / net,
            { Count: { } share } => share,
            _ => null,
        };
        return packages is > 0 and { } used ? panel.Area * panel.Coats / used : null;
    }

    /// <summary>By how much each stage took longer than the label says, 1 and more: dust, touch, tape, handle, through, service.</summary>
    private static double[] Slower(Label label, LabelTimes measured, Temperature air)
    {
        var toLabel = Math.Pow(label.Q10, (air - label.AtAir) / TenKelvin);
        return
        [
            .. new[]
            {
                (measured.Dust, label.Times.Dust), (measured.Touch, label.Times.Touch), (measured.Tape, label.Times.Tape),
                (measured.Handle, label.Times.Handle), (measured.Through, label.Times.Through), (measured.Service, label.Times.Service),
            }.Select(pair => pair.Item1 is { } own && pair.Item2 > Duration.Zero ? Math.Max(1, own / pair.Item2 * toLabel) : 1),
        ];
    }

    /// <summary>A stage never comes before the one that it follows.</summary>
    private static StageTimes Longer(StageTimes times, double[] by)
    {
        var dust = Longer(times.Dust, by[0]);
        var touch = Duration.Max(Longer(times.Touch, by[1]), dust);
        var tape = Duration.Max(Longer(times.Tape, by[2]), touch);
        var handle = Duration.Max(Longer(times.Handle, by[3]), touch);
        var through = Duration.Max(Duration.Max(Longer(times.Through, by[4]), handle), tape);
        return new StageTimes(dust, touch, tape, handle, through, Duration.Max(Longer(times.Service, by[5]), through));
    }

    private static Duration Longer(Duration time, double by) => Duration.FromSeconds(Math.Round(time.TotalSeconds * by));
}
