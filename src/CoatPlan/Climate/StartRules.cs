using CoatPlan.Presets;

namespace CoatPlan.Climate;

/// <summary>What the label and the sky ask of one minute.</summary>
internal sealed class StartRules
{
    /// <summary>How far past a limit still counts as at it: what is left by rounding, K and shares alike.</summary>
    public const double Rounding = 1e-6;

    private readonly double airLow;
    private readonly double airHigh;
    private readonly double surfaceLow;
    private readonly double surfaceHigh;
    private readonly double dry;
    private readonly double damp;
    private readonly double aboveDew;
    private readonly bool outdoors;
    private readonly double windLimit;
    private readonly int nightFrom;
    private readonly int nightUntil;

    /// <summary>The rules of one label in one place.</summary>
    public StartRules(CoatingLimits limits, PlaceClimate place)
    {
        (airLow, airHigh) = (limits.AirLow.DegreesCelsius, limits.AirHigh.DegreesCelsius);
        (surfaceLow, surfaceHigh) = (limits.SurfaceLow.DegreesCelsius, limits.SurfaceHigh.DegreesCelsius);
        (dry, damp) = (limits.HumidityLow.DecimalFractions, limits.HumidityHigh.DecimalFractions);
        aboveDew = limits.AboveDew.Kelvins;
        outdoors = place.Outdoors;
        windLimit = place.Figures.WindLimit.MetersPerSecond;
        nightFrom = MinuteOf(place.Figures.NightFrom);
        nightUntil = MinuteOf(place.Figures.NightUntil);
    }

    /// <summary>Whether a wet film may be there.</summary>
    public bool MayBeWet(in MinuteState now) => BrokenWhileWet(now) is null;

    /// <summary>Whether paint may be in the air.</summary>
    public bool MaySpray(in MinuteState now) => !(outdoors && now.Wind > windLimit + Rounding);

    /// <summary>The first rule that is broken, while spraying.</summary>
    public Breach? BrokenWhileSpraying(in MinuteState now) =>
        BrokenWhileWet(now) ?? (MaySpray(now) ? null : new Breach(StartRule.Wind, now.Wind, windLimit));

    /// <summary>The first rule that is broken, once the spraying is over.</summary>
    public Breach? BrokenWhileWet(in MinuteState now) =>
        !now.Known ? new Breach(StartRule.BeyondForecast, 0, 0)
            : outdoors && IsNight(now.MinuteOfDay) ? new Breach(StartRule.Night, 0, 0)
            : outdoors && now.Rain > 0 ? new Breach(StartRule.Rain, now.Rain, 0)
            : now.Air < airLow - Rounding ? new Breach(StartRule.AirTooCold, now.Air, airLow)
            : now.Air > airHigh + Rounding ? new Breach(StartRule.AirTooWarm, now.Air, airHigh)
            : now.Surface < surfaceLow - Rounding ? new Breach(StartRule.SurfaceTooCold, now.Surface, surfaceLow)
            : now.Surface > surfaceHigh + Rounding ? new Breach(StartRule.SurfaceTooWarm, now.Surface, surfaceHigh)
            : now.Relative > damp + Rounding ? new Breach(StartRule.TooDamp, now.Relative, damp)
            : now.Relative < dry - Rounding ? new Breach(StartRule.TooDry, now.Relative, dry)
            : now.Surface - now.Dew < aboveDew - Rounding ? new Breach(StartRule.NearDewPoint, now.Surface - now.Dew, aboveDew)
            : null;

    private bool IsNight(int minuteOfDay) => nightFrom <= nightUntil
        ? minuteOfDay >= nightFrom && minuteOfDay < nightUntil
        : minuteOfDay >= nightFrom || minuteOfDay < nightUntil;

    private static int MinuteOf(LocalTime time) => time.Hour * 60 + time.Minute;
}
