using System.Runtime.InteropServices;

namespace CoatPlan.Vapour;

/// <summary>Whether a single measure of a well-mixed room stays under a value in the mean of every minute.</summary>
/// <remarks>
/// The same room as <see cref="RoomAir"/>. Films that fade at one rate are one film, since all is linear; and a stretch in which the value could not be reached
/// even if nothing left the room, or if all was given off all the time as at its height, is gone through in one step. Minute by minute it goes only where the
/// value is near.
/// </remarks>
internal sealed class RoomCeiling
{
    /// <summary>What is left in films is nothing when it is this share of the value.</summary>
    private const double Gone = 1e-12;

    private readonly double rate;
    private readonly double under;
    private readonly ExactMinute minute;
    private readonly List<Film> films = [];
    private readonly List<MeasuredSource> spraying = [];
    private double steady;
    private double gains;
    private double inFilms;
    private double level;
    private int now;

    private RoomCeiling(double rate, double under)
    {
        (this.rate, this.under) = (rate, under);
        minute = new ExactMinute(rate);
    }

    /// <summary>Whether sources keep a room, clean at first, under a value in every minute.</summary>
    /// <param name="ratePerMinute">Share of the vapour that goes each minute, at least 0.</param>
    /// <param name="sources">In the order of their first minutes.</param>
    /// <param name="under">The value, more than zero.</param>
    public static bool KeepsUnder(double ratePerMinute, ReadOnlySpan<MeasuredSource> sources, double under) =>
        new RoomCeiling(ratePerMinute, under).Keeps(sources);

    private bool Keeps(ReadOnlySpan<MeasuredSource> sources)
    {
        var next = 0;
        now = sources.IsEmpty ? 0 : sources[0].First;
        while (true)
        {
            for (; next < sources.Length && sources[next].First == now; next++)
                spraying.Add(sources[next]);
            AddUp();

            var until = next < sources.Length ? sources[next].First : int.MaxValue;
            foreach (var source in spraying)
                until = Math.Min(until, source.End);
            if (!Reach(until))
                return false;
            if (until == int.MaxValue)
                return true;
        }
    }

    // What is sprayed now, added up anew at each change so that no rest of a difference stays behind.
    private void AddUp()
    {
        for (var i = spraying.Count - 1; i >= 0; i--)
        {
            if (spraying[i].End <= now)
                spraying.RemoveAt(i);
        }

        (steady, gains) = (0, 0);
        foreach (ref var film in CollectionsMarshal.AsSpan(films))
            film.Gain = 0;
        foreach (var source in spraying)
        {
            steady += source.AtOnce / source.Minutes;
            gains += source.FromFilm / source.Minutes;
            FilmOf(source.FilmRate).Gain += source.FromFilm / source.Minutes;
        }
    }

    // Goes on to a minute up to which all is sprayed that is sprayed now.
    private bool Reach(int until)
    {
        while (now < until)
        {
            if (level + inFilms + ((steady + gains) * (until - now)) < under || Balanced() < under)
            {
                Stride(until);
                return true;
            }

            // Nothing is given off any more: of all minutes to come the next has the most.
            if (spraying.Count == 0 && inFilms < under * Gone)
            {
                if (level * minute.KeptMean >= under)
                    return false;

                Stride(until);
                return true;
            }

            if (Step() >= under)
                return false;
        }

        return true;
    }

    // Where what leaves makes up for what is given off at most: the air never comes above it, unless it is above it now.
    private double Balanced()
    {
        if (rate <= 0)
            return double.PositiveInfinity;

        var given = steady;
        foreach (ref readonly var film in CollectionsMarshal.AsSpan(films))
            given += Math.Max(film.Rate * film.Holds, film.Gain);
        return Math.Max(level, given / rate);
    }

    private void Stride(int until)
    {
        if (until == int.MaxValue)
            return;

        var minutes = until - now;
        var stretch = new ExactMinute(rate * minutes);
        var given = (steady + gains) * minutes * stretch.SteadyEnd;
        inFilms = 0;
        foreach (ref var film in CollectionsMarshal.AsSpan(films))
        {
            if (film.Holds <= under * Gone && film.Gain == 0)
            {
                film.Holds = 0;
                continue;
            }

            given += ((film.Rate * film.Holds) - film.Gain) * minutes * stretch.FadingEnd(film.Rate * minutes);
            film.Dry(Math.Exp(-film.Rate * minutes));
            inFilms += film.Holds;
        }

        level = (level * stretch.Kept) + given;
        now = until;
    }

    // One minute; its mean.
    private double Step()
    {
        var mean = (level * minute.KeptMean) + ((steady + gains) * minute.SteadyMean);
        level = (level * minute.Kept) + ((steady + gains) * minute.SteadyEnd);
        inFilms = 0;
        foreach (ref var film in CollectionsMarshal.AsSpan(films))
        {
            var fading = (film.Rate * film.Holds) - film.Gain;
            mean += fading * film.FadingMean;
            level += fading * film.FadingEnd;
            film.Dry(film.Kept);
            inFilms += film.Holds;
        }

        now++;
        return mean;
    }

    private ref Film FilmOf(double filmRate)
    {
        for (var i = 0; i < films.Count; i++)
        {
            if (films[i].Rate == filmRate)
                return ref CollectionsMarshal.AsSpan(films)[i];
        }

        films.Add(new Film(filmRate, Math.Exp(-filmRate), minute.FadingEnd(filmRate), minute.FadingMean(filmRate)));
        return ref CollectionsMarshal.AsSpan(films)[^1];
    }

    /// <summary>All films that fade at one rate.</summary>
    /// <param name="rate">1/min.</param>
    /// <param name="kept">Share that is left a minute later.</param>
    /// <param name="fadingEnd">As <see cref="ExactMinute.FadingEnd"/>.</param>
    /// <param name="fadingMean">As <see cref="ExactMinute.FadingMean"/>.</param>
    private struct Film(double rate, double kept, double fadingEnd, double fadingMean)
    {
        public readonly double Rate = rate;
        public readonly double Kept = kept;
        public readonly double FadingEnd = fadingEnd;
        public readonly double FadingMean = fadingMean;

        /// <summary>What is still to be given off.</summary>
        public double Holds;

        /// <summary>What spraying adds each minute.</summary>
        public double Gain;

        /// <summary>Lets time pass, of which a share of what was there is left.</summary>
        public void Dry(double left) => Holds = (Holds * left) + (Gain / Rate * (1 - left));
    }
}
