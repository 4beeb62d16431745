using CoatPlan.Presets;

namespace CoatPlan.Climate;

/// <summary>When a coat may start: from its start until it can be touched, air, metal, humidity, dew point and sky stay inside what is asked.</summary>
/// <remarks>
/// Saturday 08:00, garage at 48 °F, label from 50 °F: not before 08:50. At 18:30 the air still permits, but the last piece would be wet when the
/// metal comes within 3 °C of the dew point: the last start is 17:55. With an open heater each coat is judged with the heater off from its start.
/// </remarks>
public sealed class CoatStarts
{
    /// <summary>How far ahead of the job's start coats may start: 60 days.</summary>
    public const int HorizonMinutes = 60 * 24 * 60;

    /// <summary>Minutes of drying by which rounding may miss.</summary>
    internal const double Rounding = 1e-6;

    private readonly ImmutableArray<CoatSpell> spells;

    private CoatStarts(ImmutableArray<CoatSpell> spells) => this.spells = spells;

    /// <summary>The starts of coats of one product on pieces that are sprayed together.</summary>
    /// <param name="place">The work place.</param>
    /// <param name="label">What is sprayed.</param>
    /// <param name="metals">The pieces, at least one, of the same place.</param>
    /// <exception cref="ArgumentException">There is no piece.</exception>
    public static CoatStarts Of(PlaceClimate place, Label label, params IEnumerable<SurfaceCurve> metals)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(label);
        var spells = metals.Distinct().Select(metal => place.Spell(metal, label)).ToImmutableArray();
        return spells.IsEmpty ? throw new ArgumentException("A coat is sprayed on at least one piece.", nameof(metals)) : new CoatStarts(spells);
    }

    /// <summary>The first permitted start from a minute on.</summary>
    /// <param name="from">Minutes from the job's start; before it counts as at it.</param>
    /// <param name="minutes">How long the coat takes to put on, 0 or more.</param>
    /// <returns>Minutes from the job's start; null: none within the horizon.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The coat takes less than no time.</exception>
    public int? First(int from, int minutes)
    {
        Check(minutes);
        var start = Math.Max(0, from);
        for (var agreed = 0; agreed < spells.Length;)
        {
            agreed = 0;
            foreach (var spell in spells)
            {
                if (spell.First(start, minutes) is not { } next)
                {
                    return null;
                }

                agreed = next == start ? agreed + 1 : 0;
                start = next;
            }
        }

        return start;
    }

    /// <summary>The last permitted start that follows on a permitted one without a break.</summary>
    /// <param name="start">A permitted start.</param>
    /// <param name="minutes">How long the coat takes to put on, 0 or more.</param>
    /// <param name="until">Nothing later is looked at: where all starts up to this minute are permitted, it is the answer.</param>
    /// <exception cref="ArgumentOutOfRangeException">The coat takes less than no time.</exception>
    /// <exception cref="ArgumentException">The start is not permitted.</exception>
    public int Last(int start, int minutes, int until = HorizonMinutes) => First(start, minutes) == start
        ? spells.Min(spell => spell.Last(start, minutes, Math.Clamp(until, start, HorizonMinutes)))
        : throw new ArgumentException(FormattableString.Invariant($"A coat may not start at minute {start}."), nameof(start));

    /// <summary>All permitted starts between two minutes, in order.</summary>
    /// <param name="from">First minute.</param>
    /// <param name="until">Last minute.</param>
    /// <param name="minutes">How long the coat takes to put on, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The coat takes less than no time.</exception>
    public IEnumerable<StartRange> Ranges(int from, int until, int minutes)
    {
        Check(minutes);
        return Listed();

        IEnumerable<StartRange> Listed()
        {
            for (var next = First(from, minutes); next is { } first && first <= until;)
            {
                var last = Last(first, minutes, until);
                yield return new StartRange(first, last);
                next = First(last + 1, minutes);
            }
        }
    }

    /// <summary>Why a coat may not start at a minute; null where it may.</summary>
    /// <param name="start">Minutes from the job's start, 0 or more.</param>
    /// <param name="minutes">How long the coat takes to put on, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The start lies before the job's, or the coat takes less than no time.</exception>
    public StartHindrance? WhyNot(int start, int minutes)
    {
        Check(minutes);
        ArgumentOutOfRangeException.ThrowIfNegative(start);
        StartHindrance? first = null;
        foreach (var spell in spells)
        {
            if (spell.FirstBreach(start, minutes) is var (minute, breach) && (first is null || minute < first.From))
            {
                first = new StartHindrance(breach.Rule, start, minute, spell.Over(breach.Rule, minute), breach.Measured, breach.Limit);
            }
        }

        return first;
    }

    /// <summary>When the last of the pieces can be touched.</summary>
    /// <param name="start">Start of the coat, minutes from the job's start.</param>
    /// <param name="minutes">How long it takes to put on, 0 or more.</param>
    /// <returns>Minutes from the job's start; null: never.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The coat takes less than no time.</exception>
    public int? TouchDry(int start, int minutes)
    {
        Check(minutes);
        var last = start;
        foreach (var spell in spells)
        {
            if (spell.TouchDry(start, minutes) is not { } dry)
            {
                return null;
            }

            last = Math.Max(last, dry);
        }

        return last;
    }

    private static void Check(int minutes) => ArgumentOutOfRangeException.ThrowIfNegative(minutes);
}
