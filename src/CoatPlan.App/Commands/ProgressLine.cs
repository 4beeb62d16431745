using System.Globalization;

namespace CoatPlan.App.Commands;

/// <summary>How far long work has come, as one line on the error stream that is written over; silent where nobody looks at a terminal.</summary>
/// <param name="surroundings">What it may reach.</param>
/// <param name="what">What is being done.</param>
internal sealed class ProgressLine(Surroundings surroundings, string what) : IProgress<double>
{
    private const int Steps = 100;

    private readonly Lock writing = new();

    private int shown = -1;

    /// <inheritdoc/>
    public void Report(double value)
    {
        if (!surroundings.OutputIsTerminal)
            return;

        lock (writing)
        {
            var percent = (int)(Math.Clamp(value, 0, 1) * Steps);
            if (percent <= shown)
                return;

            shown = percent;
            surroundings.Error.Write(string.Create(CultureInfo.InvariantCulture, $"\r{what}: {percent} %"));
            if (percent == Steps)
                surroundings.Error.Write($"\r{new string(' ', what.Length + 7)}\r");
        }
    }
}
