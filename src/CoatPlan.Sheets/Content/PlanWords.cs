using System.Globalization;
using CoatPlan.Jobs;
using CoatPlan.Plans;
using CoatPlan.Quantities;
using CoatPlan.Supplies;
using NodaTime.Text;
using UnitsNet;

namespace CoatPlan.Sheets.Content;

/// <summary>A plan's figures as a person reads them, in the plan's own units.</summary>
/// <param name="Plan">The plan.</param>
public sealed record PlanWords(Plan Plan)
{
    /// <summary>A box to tick, in a table.</summary>
    public const string Tick = "[ ]";

    /// <summary>Room to write, in a table.</summary>
    public const string ToWrite = "______";

    private const int AmountDecimals = 2;

    private static readonly LocalDateTimePattern DayAndTime = LocalDateTimePattern.CreateWithInvariantCulture("ddd d MMM HH:mm");
    private static readonly LocalDatePattern DayOnly = LocalDatePattern.CreateWithInvariantCulture("dddd d MMMM uuuu");
    private static readonly LocalDatePattern DayOfYear = LocalDatePattern.CreateWithInvariantCulture("dddd d MMMM");
    private static readonly LocalTimePattern TimeOnly = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    private QuantityFormat Format => Plan.Units == PrintUnits.Metric ? QuantityFormat.Metric : QuantityFormat.Us;

    /// <summary>A moment, such as "Sat 15 May 08:10".</summary>
    public static string Moment(LocalDateTime time) => DayAndTime.Format(time);

    /// <summary>A day, such as "Saturday 15 May 2027".</summary>
    public static string Day(LocalDate date) => DayOnly.Format(date);

    /// <summary>A day without its year, such as "Saturday 15 May".</summary>
    public static string DayAndMonth(LocalDate date) => DayOfYear.Format(date);

    /// <summary>A clock time, such as "08:10".</summary>
    public static string Clock(LocalDateTime time) => TimeOnly.Format(time.TimeOfDay);

    /// <summary>From when to when, the second day named where it is another.</summary>
    public static string Span(LocalDateTime start, LocalDateTime end) =>
        start.Date == end.Date ? $"{Clock(start)}–{Clock(end)}" : $"{Clock(start)}–{DayAndTime.Format(end)}";

    /// <summary>Minutes, such as "1 h 25 min".</summary>
    public static string Minutes(double minutes) => QuantityFormat.Duration(Duration.FromMinutes(minutes));

    /// <summary>A temperature in °C, in the plan's units.</summary>
    public string Temperature(double celsius) => Format.Temperature(UnitsNet.Temperature.FromDegreesCelsius(celsius));

    /// <summary>The lowest and the highest of temperatures in °C, in the plan's units.</summary>
    public string Range(IEnumerable<double> celsius)
    {
        var all = celsius.ToArray();
        var (low, high) = (Temperature(all.Min()), Temperature(all.Max()));
        return low == high ? low : $"{Degrees(all.Min())} to {high}";
    }

    /// <summary>A temperature in °C as a whole number in the plan's units, the unit left out.</summary>
    public string Degrees(double celsius) => Temperature(celsius).Split(' ')[0];

    /// <summary>The plan's unit of temperature.</summary>
    public string DegreeUnit => Temperature(0).Split(' ')[1];

    /// <summary>A difference of temperatures in K, in the plan's units.</summary>
    public string Difference(double kelvin) => Format.TemperatureDelta(TemperatureDelta.FromDegreesCelsius(kelvin));

    /// <summary>An area in m², in the plan's units.</summary>
    public string Area(double squareMetres) => Format.Area(UnitsNet.Area.FromSquareMeters(squareMetres));

    /// <summary>A length in m, in the plan's units.</summary>
    public string Length(double metres) => Format.Length(UnitsNet.Length.FromMeters(metres));

    /// <summary>A length that a moving hand keeps.</summary>
    /// <param name="metres">Metres.</param>
    public string ByHand(double metres) => Format.ByHand(UnitsNet.Length.FromMeters(metres));

    /// <summary>An air flow in m³/min, in the plan's units.</summary>
    public string Flow(double cubicMetresPerMinute) => Format.Flow(VolumeFlow.FromCubicMetersPerMinute(cubicMetresPerMinute));

    /// <summary>A room's volume in m³, in the plan's units.</summary>
    public string Room(double cubicMetres) => Format.Room(Volume.FromCubicMeters(cubicMetres));

    /// <summary>A volume of paint in ml, in the plan's units.</summary>
    public string Liquid(double millilitres) => Format.Liquid(Volume.FromMilliliters(millilitres));

    /// <summary>An amount of what is used up, such as "3 sheets", in the plan's units.</summary>
    public string Amount(double amount, string unit)
    {
        var (here, shown) = UnitWords.In(amount, unit, Plan.Units);
        return $"{QuantityFormat.Decimals(here, AmountDecimals)} {UnitWords.Behind(here, shown)}";
    }

    /// <summary>The same with the unit left out.</summary>
    public string Number(double amount, string unit) => QuantityFormat.Decimals(UnitWords.In(amount, unit, Plan.Units).Amount, AmountDecimals);

    /// <summary>An amount of money in the plan's currency.</summary>
    public string Money(decimal amount) => MinorUnits.Write(amount, Plan.Currency);

    /// <summary>An amount of money in the plan's currency, the currency left out.</summary>
    public string Figure(decimal amount) => Money(amount).Split(' ')[0];

    /// <summary>The coats of a surface, first to last.</summary>
    public string Coats(string surface) => string.Join(
        "; ",
        Plan.Layers.Where(layer => layer.Surface == surface).Select(layer => $"{(layer.Coats == 1 ? "1 coat" : $"{Count(layer.Coats)} coats")} of {Product(layer.Product)}{(layer.OnlyBare ? " on bare spots" : "")}"));

    /// <summary>A share as a whole percentage; a little is not nothing.</summary>
    public static string Percent(double share)
    {
        var whole = Math.Round(share * 100, MidpointRounding.AwayFromZero);
        return whole == 0 && share > 0 ? "under 1 %" : string.Create(CultureInfo.InvariantCulture, $"{whole} %");
    }

    /// <summary>An hour of the clock in two digits.</summary>
    public static string Hour(int hour) => hour.ToString("00", CultureInfo.InvariantCulture);

    /// <summary>A number of things.</summary>
    public static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>When the work ends and when the last film is in service.</summary>
    public static string Ends(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan is { IsWhole: false, Finish: { } part })
            return $"The part that could be placed ends {Moment(part)}.";

        var finish = plan.Finish is { } time ? $"Finish {Moment(time)}." : "Nothing could be placed.";
        return plan.InService is { } full ? $"{finish} The last film reaches service {Moment(full)}." : finish;
    }

    /// <summary>The names of surfaces, in the plan's order.</summary>
    public string Names(IEnumerable<string> surfaces)
    {
        var wanted = surfaces.ToHashSet(StringComparer.Ordinal);
        return string.Join(", ", Plan.Surfaces.Where(surface => wanted.Contains(surface.Id)).Select(Name));
    }

    /// <summary>A surface with its count, such as "Inner fender (2)".</summary>
    public static string Name(PlanSurface surface)
    {
        ArgumentNullException.ThrowIfNull(surface);
        return surface.Count == 1 ? surface.Name : string.Create(CultureInfo.InvariantCulture, $"{surface.Name} ({surface.Count})");
    }

    /// <summary>The name of a product.</summary>
    public string Product(string key) => Plan.Labels.FirstOrDefault(label => label.Product == key)?.Name ?? key;
}
