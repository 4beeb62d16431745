using CoatPlan.Jobs;
using CoatPlan.Quantities;

namespace CoatPlan.Air;

/// <summary>What the sums about the air rest on and what they leave out.</summary>
public static class AirNotes
{
    /// <summary>A sentence each.</summary>
    /// <param name="air">What the air holds.</param>
    /// <param name="place">Where the work is done.</param>
    /// <param name="format">The units that figures are told in.</param>
    /// <param name="isWhole">Whether every coat of the job is counted.</param>
    public static ImmutableArray<string> Of(AirReport air, Place place, QuantityFormat format, bool isWhole)
    {
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(format);
        if (air.ByStep.IsEmpty)
            return [isWhole ? "The air is not computed: of no coat is it known how much paint it takes." : "The air is not computed: no coat could be placed."];

        var notes = ImmutableArray.CreateBuilder<string>();
        if (!isWhole)
            notes.Add("Only the coats that could be placed are counted; the air of the whole job holds more.");
        if (air.Room is null)
        {
            notes.Add("Outdoors nothing is taken to gather; what is breathed beside the can is not computed.");
            return notes.ToImmutable();
        }

        notes.Add("One well-mixed room with everything wet counted; it understates the breathing zone of the person spraying and the heavy vapour at the floor. Ignition sources go out whatever the share.");
        if (place.Exhaust.CubicMetersPerMinute <= 0)
            notes.Add($"Without an exhaust the room clears by its leaks alone, taken as {format.Flow(air.Room.Removal)} (from memory).");
        if (!air.WithoutLimit.IsEmpty)
            notes.Add($"No 8-hour limit is known for {string.Join(", ", air.WithoutLimit)}: the mixture ratio leaves {(air.WithoutLimit.Length == 1 ? "it" : "them")} out.");
        if (air.DilutionForLimit is { } dilution)
            notes.Add($"The textbook's dilution figure, the heaviest coat given off wholly while it is sprayed, is {format.Flow(dilution)}.");
        return notes.ToImmutable();
    }
}
