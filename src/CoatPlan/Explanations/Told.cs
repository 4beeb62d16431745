using System.Globalization;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Quantities;
using NodaTime.Text;
using UnitsNet;

namespace CoatPlan.Explanations;

/// <summary>Values, sources and small explanations in words, in the units of a job.</summary>
internal sealed class Told(Job job, Catalogue catalogue)
{
    /// <summary>Source of what the person wrote.</summary>
    public const string JobFile = "the job file";

    private static readonly LocalDateTimePattern Moment = LocalDateTimePattern.CreateWithInvariantCulture("ddd d MMM HH:mm");

    private readonly QuantityFormat format = job.UnitFormat;

    /// <summary>How quantities of the job are written.</summary>
    public QuantityFormat Format => format;

    /// <summary>A figure with its sum.</summary>
    public static Explanation Sum(string what, string value, double? number, string formula, string source, params ImmutableArray<Explanation?> inputs) => new()
    {
        What = what,
        Value = value,
        Number = number,
        Formula = formula,
        Source = source,
        Inputs = [.. inputs.OfType<Explanation>()],
    };

    /// <summary>Something that is given.</summary>
    public static Explanation Given(string what, string value, string source, double? number = null) =>
        new() { What = what, Value = value, Number = number, Source = source };

    /// <summary>A bare number with up to so many digits behind the point.</summary>
    public static string Plain(double number, int decimals = 3) => QuantityFormat.Decimals(number, decimals);

    /// <summary>A share in per cent.</summary>
    public static string Percent(double share) => $"{QuantityFormat.Decimals(share * 100, 2)} %";

    /// <summary>Minutes in words.</summary>
    public static string Minutes(double minutes) => QuantityFormat.Duration(Duration.FromMinutes(minutes));

    /// <summary>A moment.</summary>
    public static string Time(LocalDateTime at) => Moment.Format(at);

    /// <summary>A moment, or that there is none.</summary>
    public static string Time(LocalDateTime? at) => at is { } known ? Time(known) : "none";

    /// <summary>Parts of a million.</summary>
    public static string Ppm(double ppm) => string.Create(CultureInfo.InvariantCulture, $"{ppm:0.#} ppm");

    /// <summary>A source with how well it is vouched for.</summary>
    public static string From(Provenance provenance) => From(provenance.Source, provenance.Status);

    /// <summary>A source with how well it is vouched for.</summary>
    public static string From(string source, Status status) => $"{source} ({Words(status)})";

    /// <summary>A status in words.</summary>
    public static string Words(Status status) => status switch
    {
        Status.Published => "published",
        Status.SecondHand => "published, read second-hand",
        Status.Computed => "computed",
        Status.CommonPractice => "common practice",
        Status.Estimate => "estimate",
        Status.FromMemory => "from memory",
        _ => throw new ArgumentOutOfRangeException(nameof(status), status, "A status of the presets."),
    };

    /// <summary>Whoever said a field of a label: the job file, a test panel, the product class with its source, or a default.</summary>
    public string Said(Label label, string field) => label.Origins.GetValueOrDefault(field, Origin.Default) switch
    {
        Origin.Job => JobFile,
        Origin.Panel => "a test panel, in the job file",
        Origin.Preset when label.Preset is { } word => $"preset {word}: {From(catalogue.Product(word).Provenance)}",
        _ => "default of the job file's contract, or another field of the label",
    };

    /// <summary>A single figure of the trade as an input.</summary>
    public Explanation Figure(string name)
    {
        var row = catalogue.Figures.Row(name);
        var (value, number) = row switch
        {
            { Number: { } plain } => (Plain(plain), (double?)plain),
            { Share: { } share } => (Percent(share.DecimalFractions), share.DecimalFractions),
            { Time: { } time } => (QuantityFormat.Duration(time), time.TotalMinutes),
            { Temperature: { } at } => (format.Temperature(at), at.DegreesCelsius),
            { Difference: { } by } => (format.TemperatureDelta(by), by.Kelvins),
            { Length: { } length } => (format.Length(length), length.Meters),
            { Area: { } area } => (format.Area(area), area.SquareMeters),
            { Pressure: { } pressure } => (format.Pressure(pressure), pressure.Kilopascals),
            { Speed: { } speed } => (format.Speed(speed), speed.MetersPerSecond),
            _ => (row.Clock?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "", null),
        };
        return Given($"{row.Means} ({name})", value, From(row.Provenance), number);
    }

    /// <summary>An area.</summary>
    public string Area(double squareMetres) => format.Area(UnitsNet.Area.FromSquareMeters(squareMetres));

    /// <summary>A volume of paint.</summary>
    public string Paint(double millilitres) => format.Liquid(Volume.FromMilliliters(millilitres));

    /// <summary>A flow of air.</summary>
    public string Flow(double cubicMetresPerMinute) => format.Flow(VolumeFlow.FromCubicMetersPerMinute(cubicMetresPerMinute));

    /// <summary>A temperature.</summary>
    public string Degrees(double celsius) => format.Temperature(Temperature.FromDegreesCelsius(celsius));
}
