using System.CommandLine;

namespace CoatPlan.App.Commands;

/// <summary>The options that say what a job may draw on besides its own file.</summary>
internal sealed class SourceOptions
{
    private readonly Option<string?> presets = Shared.PresetsOption();

    private readonly Option<string?> hours = new("--hours-from")
    {
        Description = "Folder below which the job's forecast file may lie too; only the job's own folder unless said",
        HelpName = "DIR",
    };

    private SourceOptions()
    {
    }

    /// <summary>Adds the options to a command.</summary>
    /// <param name="command">The command.</param>
    public static SourceOptions AddedTo(Command command)
    {
        var options = new SourceOptions();
        command.Add(options.presets);
        command.Add(options.hours);
        return options;
    }

    /// <summary>What the person typed.</summary>
    /// <param name="parsed">The command line.</param>
    public Sources Of(ParseResult parsed) => new(parsed.GetValue(presets), parsed.GetValue(hours));
}
