using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Climate;

/// <summary>The air in the work place of a job, and the metal that follows it, as functions of minutes from the job's start.</summary>
/// <remarks>
/// An open heater is off from the first spray until the vapour is purged. Nobody knows those minutes before the schedule is made, so here the
/// heater burns until it is told otherwise: <see cref="WithHeaterOff"/> gives the same place with those times. <see cref="CoatStarts"/> needs
/// no telling: it judges each coat with the heater off from that coat's start.
/// </remarks>
public sealed class PlaceClimate
{
    private readonly Days<WeatherDay> weather;
    private readonly Heater heater;
    private readonly Memo<LagKey, SurfaceCurve> metals;
    private readonly Memo<WetKey, Stretches> wets;
    private readonly Memo<SpellKey, CoatSpell> spells;

    private PlaceClimate(LocalDateTime start, bool outdoors, ClimateFigures figures, Days<WeatherDay> weather, Heater heater, ImmutableArray<HeaterOff> offs)
    {
        Start = start;
        Outdoors = outdoors;
        Figures = figures;
        HeaterOffs = offs;
        this.weather = weather;
        this.heater = heater;
        Air = new AirCurve(weather, heater, offs);
        metals = new Memo<LagKey, SurfaceCurve>(key => new SurfaceCurve(Air, key.Minutes));
        wets = new Memo<WetKey, Stretches>(key => CoatSpell.MayBeWet(this, key.Metal, new StartRules(key.Limits, this)));
        spells = new Memo<SpellKey, CoatSpell>(key => new CoatSpell(this, key.Metal, new StartRules(key.Limits, this), wets[new WetKey(key.Metal, key.Limits)], key.Law, key.Need));
    }

    /// <summary>The job's start, minute 0.</summary>
    public LocalDateTime Start { get; }

    /// <summary>Whether the work is done outdoors.</summary>
    public bool Outdoors { get; }

    /// <summary>The trade's figures in use.</summary>
    public ClimateFigures Figures { get; }

    /// <summary>When the heater is off because of vapour.</summary>
    public ImmutableArray<HeaterOff> HeaterOffs { get; }

    /// <summary>The air in the work place.</summary>
    public AirCurve Air { get; }

    /// <summary>Whether there is a heater that must be off while there is vapour.</summary>
    public bool HasOpenHeater => heater.IsOpen;

    /// <summary>The climate of a work place.</summary>
    /// <param name="place">The place, with its weather and heater.</param>
    /// <param name="start">The job's start.</param>
    /// <param name="figures">The trade's figures.</param>
    /// <param name="forecast">The forecast that the job names; needed for <see cref="HourlyWeather"/> and not looked at otherwise.</param>
    /// <exception cref="ArgumentException">The job's weather is a forecast, and none was given.</exception>
    public static PlaceClimate Of(Place place, LocalDateTime start, ClimateFigures figures, HourlyForecast? forecast = null)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(figures);
        var heater = new Heater(
            place.Hold?.DegreesCelsius,
            place.Hold is not null && place.Heater == HeaterKind.Open ? Math.Max(Duration.Epsilon.TotalMinutes, place.CoolsIn.TotalMinutes) : null);
        return new PlaceClimate(start, place.Outdoors, figures, Weathers.Of(place.Weather, start, forecast), heater, []);
    }

    /// <summary>The same place with an open heater off at given times; a sealed heater keeps working.</summary>
    /// <param name="offs">When it is off, in any order.</param>
    /// <exception cref="ArgumentException">One of them ends before it begins.</exception>
    public PlaceClimate WithHeaterOff(params ImmutableArray<HeaterOff> offs)
    {
        foreach (var off in offs)
        {
            if (off.Until < off.From)
            {
                throw new ArgumentException(FormattableString.Invariant($"A heater cannot be off from minute {off.From} until minute {off.Until}."), nameof(offs));
            }
        }

        return new PlaceClimate(Start, Outdoors, Figures, weather, heater, offs);
    }

    /// <summary>The temperature of a piece that follows the air with a time constant.</summary>
    /// <param name="lag">Time constant, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time constant is below 0.</exception>
    public SurfaceCurve Metal(Duration lag) => lag >= Duration.Zero
        ? metals[new LagKey(lag.TotalMinutes)]
        : throw new ArgumentOutOfRangeException(nameof(lag), lag, "A piece cannot lead the air: its time constant must be 0 or more.");

    /// <summary>The temperature of a surface's pieces.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="catalogue">The presets, for what its material holds in heat.</param>
    /// <exception cref="ArgumentException">No preset has the surface's material.</exception>
    public SurfaceCurve Metal(JobSurface surface, Catalogue catalogue) => Metal(MetalLag.Of(surface, catalogue, Outdoors));

    /// <summary>The first minute from one on from which it does not rain on the work for so long.</summary>
    /// <param name="from">Minutes from the job's start; before it counts as at it.</param>
    /// <param name="minutes">How long it has to stay dry, 1 or more.</param>
    /// <returns>Minutes from the job's start; null: none within the horizon.</returns>
    public int? FirstDry(int from, int minutes)
    {
        var start = Math.Max(0, from);
        for (var minute = start; Outdoors && start <= CoatStarts.HorizonMinutes && minute < start + minutes; minute++)
        {
            if (Rains(minute))
            {
                start = minute + 1;
            }
        }

        return start <= CoatStarts.HorizonMinutes ? start : null;
    }

    private bool Rains(int minute)
    {
        var (day, index) = AirCurve.Split(minute);
        return weather[day].RainMillimetres?[index] > 0;
    }

    /// <summary>The starts of one product's coats on one piece; products with the same limits share what they look at.</summary>
    internal CoatSpell Spell(SurfaceCurve metal, Label label)
    {
        var (law, need) = LabelLaws.Stage(label, DryingStage.Touch);
        return spells[new SpellKey(metal, label.Limits, law, need)];
    }

    private readonly record struct LagKey(double Minutes);

    private readonly record struct WetKey(SurfaceCurve Metal, CoatingLimits Limits);

    private readonly record struct SpellKey(SurfaceCurve Metal, CoatingLimits Limits, RateLaw Law, double Need);
}
