using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Problems;

namespace CoatPlan.App;

/// <summary>From a name on the command line to a job that can be planned.</summary>
internal static class JobSource
{
    private const string StandardInput = "-";

    private const string StandardInputName = "standard input";

    private const int MostPresetFiles = 100;

    /// <summary>Reads a job file, the presets and the forecast it names.</summary>
    /// <param name="surroundings">What may be reached.</param>
    /// <param name="path">Path of the job file, or <c>-</c> for standard input.</param>
    /// <param name="sources">What the job may draw on besides.</param>
    /// <exception cref="BadInputException">Something cannot be read, or holds mistakes; a line for each.</exception>
    public static OpenedJob Open(Surroundings surroundings, string path, Sources sources)
    {
        var workshop = Workshop(sources);
        var (name, text, file) = path == StandardInput
            ? (StandardInputName, FromInput(surroundings), (string?)null)
            : (path, TextFile.ReadJob(path), path);
        var reading = workshop.Read(text.Text, name, file, null);
        return reading.Ready is { } ready ? new OpenedJob(name, ready) : throw Wrong(reading.Problems);
    }

    /// <summary>The presets in use and what is done with them.</summary>
    /// <param name="sources">What a job may draw on besides its own file.</param>
    /// <exception cref="BadInputException">The folder cannot be read, or its files hold mistakes; a line for each.</exception>
    public static Workshop Workshop(Sources sources)
    {
        var trade = Trade(sources.Presets);
        return new Workshop(
            trade,
            (document, name, file, before) => JobIntake.Read(document, name, trade, forecast => ForecastFile.Read(file, forecast, sources.Hours), before),
            PlannedJob.AtOnce,
            PlannedJob.InFull);
    }

    /// <summary>The presets in use.</summary>
    /// <param name="presetsFolder">Folder with presets of the user's own; null for none.</param>
    /// <exception cref="BadInputException">The folder cannot be read, or its files hold mistakes; a line for each.</exception>
    public static Trade Trade(string? presetsFolder)
    {
        if (presetsFolder is null)
            return CoatPlan.Trade.Standard;

        var reading = CoatPlan.Trade.Read(Overrides(presetsFolder));
        return reading.Trade ?? throw Wrong(reading.Problems);
    }

    private static BadInputException Wrong(ImmutableArray<Problem> problems) => new([.. problems.Select(problem => problem.ToString())]);

    private static JobText FromInput(Surroundings surroundings)
    {
        using var input = surroundings.OpenInput();
        return TextFile.ReadJob(input, StandardInputName);
    }

    private static ImmutableArray<PresetText> Overrides(string folder)
    {
        if (!Directory.Exists(folder))
            throw new BadInputException($"{folder}: no such folder; expected one with preset files");

        var files = Directory.EnumerateFiles(folder, "*.yaml").Order(StringComparer.Ordinal).Take(MostPresetFiles + 1).ToList();
        return files.Count switch
        {
            0 => throw new BadInputException($"{folder}: holds no preset file; expected files that end in .yaml"),
            > MostPresetFiles => throw new BadInputException($"{folder}: holds more than {MostPresetFiles} files that end in .yaml"),
            _ => Overrides(folder, files),
        };
    }

    private static ImmutableArray<PresetText> Overrides(string folder, List<string> files)
    {
        var texts = ImmutableArray.CreateBuilder<PresetText>();
        var length = 0L;
        foreach (var file in files)
        {
            texts.Add(new PresetText(file, TextFile.Read(file, TextFile.LargestPresets)));
            length += texts[^1].Text.Length;
            if (length > TextFile.LargestPresets)
                throw new BadInputException($"{folder}: its preset files are together larger than {TextFile.LargestPresets / (1024 * 1024)} MB");
        }

        return texts.ToImmutable();
    }
}
