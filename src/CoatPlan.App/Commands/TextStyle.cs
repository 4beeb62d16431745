using CoatPlan.Jobs;

namespace CoatPlan.App.Commands;

/// <summary>How a plan is printed.</summary>
/// <param name="Units">The job's units.</param>
/// <param name="Currency">ISO 4217 code of its prices.</param>
/// <param name="Width">Columns a line may take, at least <see cref="Narrowest"/>.</param>
/// <param name="Emphasis">Whether headings are bold.</param>
internal sealed record TextStyle(PrintUnits Units, string Currency, int Width, bool Emphasis)
{
    /// <summary>Fewest columns in which a plan can be read.</summary>
    public const int Narrowest = 40;

    /// <summary>Most columns that can be asked for.</summary>
    public const int Widest = 400;

    /// <summary>The style of a job's texts where the program runs.</summary>
    /// <param name="surroundings">Width and emphasis.</param>
    /// <param name="job">Units and currency.</param>
    public static TextStyle Of(Surroundings surroundings, Job job) =>
        new(job.Units, job.Prices?.Currency ?? JobDefaults.Currency, surroundings.Width, surroundings.Emphasis);
}
