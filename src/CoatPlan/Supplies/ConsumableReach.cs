using System.Globalization;
using CoatPlan.Jobs;
using CoatPlan.Presets;

namespace CoatPlan.Supplies;

/// <summary>How far a consumable goes: said once in a job, not for each surface it is used on.</summary>
/// <param name="Consumable">What is used up.</param>
/// <param name="SquareMetres">Area that one does, more than zero.</param>
/// <param name="Rule">The same in words.</param>
internal sealed record ConsumableReach(Consumable Consumable, double SquareMetres, string Rule)
{
    /// <summary>That of a consumable, in the units of the job; null for one that is not counted by area.</summary>
    public static ConsumableReach? Of(Consumable consumable, PrintUnits units) =>
        consumable.GoesFar is { } reach ? new ConsumableReach(consumable, reach.SquareMeters, RuleOf(consumable, reach, units)) : null;

    private static string RuleOf(Consumable consumable, UnitsNet.Area reach, PrintUnits units)
    {
        if (units == PrintUnits.Us)
            return string.Create(CultureInfo.InvariantCulture, $"one {consumable.Unit} does {reach.SquareFeet:0.#} ft² ({reach.SquareMeters:0.0} m²)");

        var (amount, unit) = UnitWords.In(1, consumable.Unit, units);
        var one = unit == consumable.Unit ? $"one {unit}" : string.Create(CultureInfo.InvariantCulture, $"{amount:0.##} {unit}");
        return string.Create(CultureInfo.InvariantCulture, $"{one} does {reach.SquareMeters:0.0#} m²");
    }
}
