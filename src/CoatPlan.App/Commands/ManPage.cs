using System.CommandLine;
using System.Text;

namespace CoatPlan.App.Commands;

/// <summary>The manual page, made from the commands that the help is made from. Source of the macros: man(7).</summary>
internal static class ManPage
{
    /// <summary>The page as roff text with LF line ends.</summary>
    /// <param name="root">The root command.</param>
    public static string Of(RootCommand root)
    {
        var page = new StringBuilder();
        Line(page, ".TH COATPLAN 1");
        Section(page, "NAME");
        Text(page, "coatplan - plans the refinishing of the parts around an engine");
        Section(page, "SYNOPSIS");
        Line(page, ".B coatplan");
        Line(page, "[\\fIJOB\\fR]");
        Line(page, ".br");
        Line(page, ".B coatplan");
        Line(page, "\\fICOMMAND\\fR [\\fIARGUMENT\\fR...] [\\fIOPTION\\fR...]");
        Section(page, "DESCRIPTION");
        Text(page, root.Description ?? "");
        Line(page, ".PP");
        Text(page, "Everything it says gives way to the product's own label and safety data sheet, to local codes and to licensed practice.");
        Section(page, "OPTIONS");
        foreach (var option in Shown(root))
            Say(page, option);
        Section(page, "COMMANDS");
        foreach (var command in root.Subcommands.Where(command => !command.Hidden))
            Say(page, command);
        Section(page, "EXIT STATUS");
        foreach (var (code, when) in ExitCode.Meanings)
            Item(page, code.ToString(System.Globalization.CultureInfo.InvariantCulture), when);
        Section(page, "ENVIRONMENT");
        Item(page, "NO_COLOR", "Set and not empty: no colour is written, by the terminal UI either.");
        Section(page, "EXAMPLES");
        foreach (var command in root.Subcommands.Where(command => !command.Hidden))
            Example(page, command);
        return page.ToString();
    }

    private static void Say(StringBuilder page, Command command)
    {
        Line(page, $".SS \"{Escaped(string.Join(' ', new[] { command.Name }.Concat(command.Arguments.Select(Spelled))))}\"");
        Text(page, command.Description ?? "");
        foreach (var argument in command.Arguments)
            Item(page, argument.Name, argument.Description ?? "");
        foreach (var option in Shown(command))
            Say(page, option);
    }

    private static void Say(StringBuilder page, Option option)
    {
        var value = option.HelpName is { } name ? $" {name}" : "";
        var due = option.Required ? " Required." : "";
        Item(page, string.Join(", ", new[] { option.Name }.Concat(option.Aliases.Where(alias => alias.StartsWith('-')).Order(StringComparer.Ordinal))) + value, $"{option.Description}.{due}");
    }

    private static void Example(StringBuilder page, Command command)
    {
        Line(page, ".PP");
        Line(page, ".EX");
        Line(page, Escaped(ExampleHelp.Of(command)));
        Line(page, ".EE");
    }

    // The help option is every command's; the page says it once.
    private static IEnumerable<Option> Shown(Command command) =>
        command.Options.Where(option => !option.Hidden && (command is RootCommand || option is not System.CommandLine.Help.HelpOption));

    private static string Spelled(Argument argument) =>
        argument.Arity.MinimumNumberOfValues == 0 ? $"[{argument.Name}]" : argument.Name;

    private static void Section(StringBuilder page, string name) => Line(page, $".SH {name}");

    private static void Item(StringBuilder page, string term, string text)
    {
        Line(page, ".TP");
        Line(page, $".B \"{Escaped(term)}\"");
        Text(page, text);
    }

    private static void Text(StringBuilder page, string text) => Line(page, Escaped(text));

    // A hyphen that is typed is \-, a backslash \e, and a line that begins with a dot or an apostrophe would be a macro.
    private static string Escaped(string text)
    {
        var plain = text.Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal).Replace("\"", "\\(dq", StringComparison.Ordinal);
        return plain.StartsWith('.') || plain.StartsWith('\'') ? "\\&" + plain : plain;
    }

    private static void Line(StringBuilder page, string line) => page.Append(line).Append('\n');
}
