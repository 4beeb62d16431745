using System.Text.RegularExpressions;

namespace CoatPlan.Tests.Docs;

/// <summary>A fenced block of a page.</summary>
/// <param name="Language">What stands behind the fence.</param>
/// <param name="Text">The block, line ends of LF.</param>
/// <param name="Before">The last line of text before it.</param>
/// <param name="EndsAt">The line of the page at which it ends.</param>
internal sealed record DocsBlock(string Language, string Text, string Before, int EndsAt)
{
    /// <summary>The file that it shows, where the sentence before it ends with the file's name; null: none.</summary>
    public string? File => Regex.Match(Before, @"`([\w./-]+\.(?:yaml|csv))`:$") is { Success: true } match ? match.Groups[1].Value : null;

    public bool IsJob => Language == "yaml" && Text.Contains("coatplan: 1", StringComparison.Ordinal);
}
