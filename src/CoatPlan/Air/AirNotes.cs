using System.Globalization;
using CoatPlan.Jobs;

namespace CoatPlan.Air;

/// <summary>What the sums about the air rest on and what they leave out.</summary>
public static class AirNotes
{
    /// <summary>A sentence each.</summary>
    /// <param name="air">What the air holds.</param>
    /// <param name="place">Where the work is done.</param>
    public static ImmutableArray<string> Of(AirReport air, Place place)
    {
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(place);
        if (air.ByStep.IsEmpty)
            return [];

        var notes = ImmutableArray.CreateBuilder<string>();
        if (air.Room is null)
        {
            notes.Add("Outdoors nothing is taken to gather; what is breathed beside the can is not computed.");
            return notes.ToImmutable();
        }

        notes.Add("One well-mixed room with everything wet counted; it understates the breathing zone of the person spraying and the heavy vapour at the floor. Ignition sources go out whatever the share.");
        if (place.Exhaust.CubicMetersPerMinute <= 0)
            notes.Add(Say($"Without an exhaust the room clears by its leaks alone, taken as {air.Room.Removal.CubicMetersPerMinute:0.00} m³/min (from memory)."));
        if (!air.WithoutLimit.IsEmpty)
            notes.Add($"No 8-hour limit is known for {string.Join(", ", air.WithoutLimit)}: the mixture ratio leaves {(air.WithoutLimit.Length == 1 ? "it" : "them")} out.");
        if (air.DilutionForLimit is { } dilution)
            notes.Add(Say($"The textbook's dilution figure, the heaviest coat given off wholly while it is sprayed, is {dilution.CubicMetersPerMinute:0.0} m³/min ({dilution.CubicFeetPerMinute:0} ft³/min)."));
        return notes.ToImmutable();
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
