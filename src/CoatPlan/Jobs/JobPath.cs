using System.Globalization;
using System.Text;

namespace CoatPlan.Jobs;

/// <summary>The way to a value of a job file, e.g. <c>surfaces[2].area</c>.</summary>
public sealed record JobPath
{
    private JobPath(ImmutableArray<PathStep> steps) => Steps = steps;

    /// <summary>The whole job.</summary>
    public static JobPath Root { get; } = new([]);

    /// <summary>The steps from the root.</summary>
    public ImmutableArray<PathStep> Steps { get; }

    /// <summary>The value of a key of this map.</summary>
    /// <param name="key">The key.</param>
    public JobPath Key(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return new(Steps.Add(new(key, 0)));
    }

    /// <summary>The item of an index of this list.</summary>
    /// <param name="index">The index, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="index"/> is less than 0.</exception>
    public JobPath At(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        return new(Steps.Add(new(null, index)));
    }

    /// <summary>Reads a path such as <c>surfaces[2].mask[0].edge</c>; keys with dots or brackets are added by <see cref="Key"/>.</summary>
    /// <param name="path">The path; empty: the root.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is not such a path.</exception>
    public static JobPath Parse(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var result = Root;
        if (path.Length == 0) return result;
        foreach (string part in path.Split('.'))
        {
            string[] pieces = part.Split('[');
            if (pieces[0].Length > 0) result = result.Key(pieces[0]);
            else if (pieces.Length == 1) throw new ArgumentException($"`{path}` is no path such as surfaces[2].area.", nameof(path));
            foreach (string piece in pieces[1..])
            {
                bool isIndex = piece.EndsWith(']') & int.TryParse(piece.TrimEnd(']'), NumberStyles.None, CultureInfo.InvariantCulture, out int index);
                result = isIndex ? result.At(index) : throw new ArgumentException($"`{path}` is no path such as surfaces[2].area.", nameof(path));
            }
        }

        return result;
    }

    /// <summary>The path as it is written, e.g. <c>surfaces[2].area</c>.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        foreach (var step in Steps)
        {
            if (step.Key is null) text.Append(CultureInfo.InvariantCulture, $"[{step.Index}]");
            else text.Append(text.Length > 0 ? "." : "").Append(step.Key);
        }

        return text.ToString();
    }

    /// <summary>Whether two paths have the same steps.</summary>
    /// <param name="other">The other path.</param>
    public bool Equals(JobPath? other) => other is not null && Steps.SequenceEqual(other.Steps);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);
}
