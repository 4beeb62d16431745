using System.Text;
using CoatPlan.Sheets.Content;

namespace CoatPlan.App;

/// <summary>What the program can reach outside itself: streams, files, the terminal, the environment. Tests bring their own.</summary>
internal sealed record Surroundings
{
    private const int UsualWidth = 80;

    /// <summary>Where results go.</summary>
    public required TextWriter Out { get; init; }

    /// <summary>Where problems and progress go.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Opens standard input.</summary>
    public required Func<Stream> OpenInput { get; init; }

    /// <summary>Whether standard input comes from a terminal.</summary>
    public required bool InputIsTerminal { get; init; }

    /// <summary>Whether results go to a terminal.</summary>
    public required bool OutputIsTerminal { get; init; }

    /// <summary>Columns that text may take.</summary>
    public int Width { get; init; } = UsualWidth;

    /// <summary>A variable of the environment; null where it is not set.</summary>
    public Func<string, string?> Variable { get; init; } = static _ => null;

    /// <summary>Today's date and time on the wall, for a new job only.</summary>
    public Func<LocalDateTime> WallTime { get; init; } = static () => new LocalDateTime(2027, 5, 14, 8, 0);

    /// <summary>The folder for work that has no file yet; null where none is kept.</summary>
    public string? OwnFolder { get; init; }

    /// <summary>Whether emphasis may be written: to a terminal, and only where nobody asked for none.</summary>
    public bool Emphasis => OutputIsTerminal && !NoColour && Variable("TERM") != "dumb";

    /// <summary>Whether the person asked for no colour. Source: the NO_COLOR convention, set and not empty.</summary>
    public bool NoColour => !string.IsNullOrEmpty(Variable("NO_COLOR"));

    /// <summary>Prints one line; nothing in it can steer the terminal.</summary>
    /// <param name="line">The line, with whatever a person or a file put into it.</param>
    public void Say(string line) => Out.WriteLine(PlainText.Of(line));

    /// <summary>Prints one line to the error stream; nothing in it can steer the terminal.</summary>
    /// <param name="line">The line, with whatever a person or a file put into it.</param>
    public void Complain(string line) => Error.WriteLine(PlainText.Of(line));

    /// <summary>The machine the program runs on.</summary>
    public static Surroundings OfThisMachine()
    {
        // Without a byte order mark: a reader of the pipe expects plain text.
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return new Surroundings
        {
            Out = new StreamWriter(Console.OpenStandardOutput(), utf8) { AutoFlush = false, NewLine = "\n" },
            Error = new StreamWriter(Console.OpenStandardError(), utf8) { AutoFlush = true, NewLine = "\n" },
            OpenInput = Console.OpenStandardInput,
            InputIsTerminal = !Console.IsInputRedirected,
            OutputIsTerminal = !Console.IsOutputRedirected,
            OwnFolder = Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "coatplan"),
            Variable = Environment.GetEnvironmentVariable,
            WallTime = static () => LocalDateTime.FromDateTime(DateTime.Now),
        };
    }
}
