namespace CoatPlan.Jobs.Yaml;

/// <summary>A key and its value.</summary>
internal sealed record MapEntry(TextNode Key, Node Value);
