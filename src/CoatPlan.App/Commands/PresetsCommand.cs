using System.CommandLine;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan presets [WORD]</c>: what the trade knows, with where each row comes from.</summary>
internal static class PresetsCommand
{
    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("presets", "List materials, finishes, conditions, products, solvents, consumables and the rest, with their sources; a search shows what goes on what too.");
        var words = new Argument<string[]>("WORD") { Description = "Only rows that hold all these words", Arity = ArgumentArity.ZeroOrMore };
        var presets = Shared.PresetsOption();
        command.Add(words);
        command.Add(presets);
        command.SetAction(parsed => Run(surroundings, parsed.GetValue(words) ?? [], parsed.GetValue(presets)));
        return command;
    }

    private static int Run(Surroundings surroundings, string[] words, string? presetsFolder)
    {
        var catalogue = JobSource.Trade(presetsFolder).Catalogue;
        var found = words.Length == 0
            ? PresetTables.Of(catalogue)
            : [.. PresetTables.WithPairings(catalogue).Select(table => words.Aggregate(table, (left, word) => left.Holding(word))).Where(table => !table.Rows.IsEmpty)];
        if (found.IsEmpty)
            throw new BadInputException($"'{string.Join(' ', words)}': no row of the presets holds this; coatplan presets lists them all");

        foreach (var table in found)
            Print(surroundings, table);
        return ExitCode.Done;
    }

    private static void Print(Surroundings surroundings, PresetTable table)
    {
        surroundings.Out.WriteLine(table.Title);
        surroundings.Out.WriteLine(new string('-', table.Title.Length));
        foreach (var row in table.Rows)
        {
            surroundings.Say($"  {row.Word}");
            foreach (var text in new[] { row.Means, row.From }.Where(text => text.Length > 0))
            {
                foreach (var line in Wrapping.Hanging("      ", text, Math.Max(surroundings.Width, TextStyle.Narrowest)))
                    surroundings.Out.WriteLine(line);
            }
        }

        surroundings.Out.WriteLine();
    }
}
