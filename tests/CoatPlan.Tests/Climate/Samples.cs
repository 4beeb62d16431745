using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using UnitsNet;

namespace CoatPlan.Tests.Climate;

/// <summary>A label, a place and the trade's figures, of which a test says only what matters.</summary>
internal static class Samples
{
    public static readonly LocalDateTime FridayAfternoon = new(2027, 5, 14, 16, 0);

    public static readonly ClimateFigures Figures = new()
    {
        WindLimit = Speed.FromMilesPerHour(10),
        NightFrom = new LocalTime(19, 0),
        NightUntil = new LocalTime(8, 0),
        ThickFilmPower = 1.5,
        WipeFlash = Duration.FromMinutes(10),
        WipeQ10 = 2,
    };

    public static readonly CoatingLimits WideLimits = new(
        Fahrenheit(-40), Fahrenheit(200), Fahrenheit(-40), Fahrenheit(200), Ratio.Zero, Ratio.FromPercent(100), TemperatureDelta.FromKelvins(0));

    public static readonly CoatingLimits UsualLimits = new(
        Fahrenheit(50), Fahrenheit(90), Fahrenheit(50), Fahrenheit(90), Ratio.Zero, Ratio.FromPercent(65), TemperatureDelta.FromKelvins(3));

    /// <summary>Touch 25 min, tape 90 min, handle 3 h, through 24 h at 70 °F; recoat 10 min–1 h or after 48 h.</summary>
    public static readonly Label Black = new()
    {
        Key = "black",
        Preset = null,
        Name = "Satin black",
        Method = new CoatingMethod(
            "aerosol", ApplicationMethod.Aerosol, Ratio.FromPercent(35), Ratio.FromPercent(10), null, 0.5, Ratio.Zero, Ratio.Zero, null, null,
            new Provenance("invented", Status.Estimate)),
        Drying = DryingKind.Oxidation,
        NetMass = null,
        NetVolume = null,
        Price = null,
        Pack = 1,
        Covers = Area.FromSquareFeet(13),
        SolidsByVolume = null,
        Density = null,
        DryFilm = null,
        HoldsOnVertical = null,
        Hiding = 0.95,
        MustHide = false,
        Lightness = null,
        CoatsLeast = 2,
        CoatsMost = 3,
        Loss = Ratio.FromPercent(35),
        AtAir = Fahrenheit(70),
        AtHumidity = Ratio.FromPercent(50),
        Times = Times(1),
        TimesAt = [],
        Recoat = [Window(10, 60), Window(48 * 60, null)],
        Topcoat = [Window(48 * 60, null)],
        Missed = MissedRework.Scuff,
        UseWithin = null,
        Limits = WideLimits,
        Heat = null,
        HeatPeak = null,
        Cure = [],
        Solvents = [],
        Hazards = [],
        LabelSays = [],
        Q10 = 2,
        Family = "",
        Role = null,
        Rust = null,
        WantsTooth = false,
        SoftenedByBrakeFluid = false,
        Origins = ImmutableSortedDictionary<string, Origin>.Empty,
    };

    /// <summary>Follows the air in 3.3 min: a fender of 0.8 mm, both faces.</summary>
    public static readonly Duration Fender = Duration.FromMinutes(3.3);

    /// <summary>Follows the air in 47 min: 6 mm of cast iron, one face.</summary>
    public static readonly Duration Casting = Duration.FromMinutes(47);

    public static StageTimes Times(double factor) => new(
        Minutes(25 * factor), Minutes(25 * factor), Minutes(90 * factor), Minutes(180 * factor), Minutes(1440 * factor), Minutes(7 * 1440 * factor));

    public static CoatWindow Window(double from, double? to) => new(Minutes(from), to is { } end ? Minutes(end) : null);

    public static Temperature Fahrenheit(double degrees) => Temperature.FromDegreesFahrenheit(degrees);

    public static Weather Steady(double fahrenheit, double percent) => new SteadyWeather { Air = Fahrenheit(fahrenheit), Humidity = Ratio.FromPercent(percent) };

    public static Weather Daily(double low, double high, double dewPoint) =>
        new DailyWeather { Low = Fahrenheit(low), High = Fahrenheit(high), DewPoint = Fahrenheit(dewPoint) };

    public static Place Garage(Weather weather) => new() { Volume = Volume.FromCubicMeters(112), Weather = weather };

    public static Place Yard(Weather weather) => new() { Outdoors = true, Weather = weather };

    public static PlaceClimate In(Place place) => PlaceClimate.Of(place, FridayAfternoon, Figures);

    public static PlaceClimate In(Weather weather) => In(Garage(weather));

    private static Duration Minutes(double minutes) => Duration.FromMinutes(minutes);
}
