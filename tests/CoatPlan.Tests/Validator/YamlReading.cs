using YamlDotNet.RepresentationModel;

namespace CoatPlan.Tests.Validator;

/// <summary>Values of a YAML mapping by key, null or empty where they are not there.</summary>
internal static class YamlReading
{
    public static YamlNode? At(this YamlMappingNode node, string key) =>
        node.Children.FirstOrDefault(pair => pair.Key is YamlScalarNode scalar && scalar.Value == key).Value;

    public static string? Text(this YamlMappingNode node, string key) =>
        node.At(key) is YamlScalarNode { Value: { } text } && text.Length > 0 && text is not ("~" or "null") ? text : null;

    public static YamlMappingNode? Map(this YamlMappingNode node, string key) => node.At(key) as YamlMappingNode;

    public static IEnumerable<YamlNode> List(this YamlMappingNode node, string key) => node.At(key) as YamlSequenceNode ?? [];

    /// <summary>The entries of a mapping whose keys are plain text, in the order of the file.</summary>
    public static IEnumerable<(string Key, YamlNode Value)> Entries(this YamlMappingNode? node) =>
        node is null ? [] : node.Children.Select(pair => (((YamlScalarNode)pair.Key).Value!, pair.Value));

    public static bool IsTrue(this YamlMappingNode node, string key) =>
        node.Text(key)?.ToLowerInvariant() is "true" or "yes" or "on";
}
