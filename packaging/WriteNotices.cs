using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Xml.Linq;
using Microsoft.Build.Framework;
using Microsoft.Build.Utilities;

/// <summary>Writes the notices of the packages whose files are published, from the packages as restored. Compiled by the build when it is needed.</summary>
public sealed class WriteNotices : Task
{
    private const string Rule = "================================================================================";

    /// <summary>Published files that came in a package: NuGetPackageId and NuGetPackageVersion say which.</summary>
    public ITaskItem[] Files { get; set; }

    /// <summary>Folders in which packages lie, separated by semicolons.</summary>
    public string PackageFolders { get; set; }

    /// <summary>Folder with the texts of the standard licences, each named by its SPDX identifier.</summary>
    public string LicenceTexts { get; set; }

    /// <summary>The licences of the typefaces, each named after its typeface.</summary>
    public ITaskItem[] Typefaces { get; set; }

    /// <summary>The file to write.</summary>
    public string To { get; set; }

    public override bool Execute()
    {
        var packages = Files
            .Select(file => Tuple.Create(file.GetMetadata("NuGetPackageId"), file.GetMetadata("NuGetPackageVersion")))
            .Where(package => package.Item1.Length > 0)
            .Distinct()
            .OrderBy(package => package.Item1, StringComparer.OrdinalIgnoreCase)
            .ToList();
        var asked = new SortedSet<string>(StringComparer.Ordinal);
        var text = new StringBuilder();
        text.Append("CoatPlan carries the packages and the typefaces below. Each stays under its own licence.\n");
        foreach (var package in packages)
            Say(text, package.Item1, package.Item2, asked);

        foreach (var typeface in Typefaces.Select(item => item.ItemSpec).OrderBy(file => Path.GetFileName(file), StringComparer.Ordinal))
            text.Append('\n').Append(Rule).Append('\n').Append(Path.GetFileName(typeface).Split('-')[0]).Append(", a typeface of the sheets\n\n").Append(Plain(File.ReadAllText(typeface)));
        foreach (var identifier in asked)
            text.Append('\n').Append(Rule).Append("\nThe text of ").Append(identifier).Append("\n\n").Append(Plain(File.ReadAllText(TextOf(identifier))));

        if (Log.HasLoggedErrors)
            return false;
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(To)));
        File.WriteAllText(To, text.ToString(), new UTF8Encoding(false));
        return true;
    }

    private void Say(StringBuilder text, string id, string version, SortedSet<string> asked)
    {
        var folder = PackageFolders.Split(';')
            .Where(root => root.Length > 0)
            .Select(root => Path.Combine(root, id.ToLowerInvariant(), version.ToLowerInvariant()))
            .FirstOrDefault(Directory.Exists);
        if (folder == null)
        {
            Log.LogError("Notices: the package {0} {1} is published but lies in none of {2}.", id, version, PackageFolders);
            return;
        }

        var about = XDocument.Load(Directory.GetFiles(folder, "*.nuspec").Single()).Root.Elements().First(element => element.Name.LocalName == "metadata");
        text.Append('\n').Append(Rule).Append('\n').Append(id).Append(' ').Append(version).Append('\n');
        Add(text, "Authors", Of(about, "authors"));
        Add(text, "Copyright", Of(about, "copyright"));
        Add(text, "From", Of(about, "projectUrl"));

        var licence = about.Elements().FirstOrDefault(element => element.Name.LocalName == "license");
        var files = Directory.GetFiles(folder)
            .Where(file => IsNotice(Path.GetFileName(file)))
            .OrderBy(file => file, StringComparer.Ordinal)
            .ToList();
        if (licence != null && (string)licence.Attribute("type") == "file")
            files.Add(Path.Combine(folder, licence.Value.Replace('\\', '/')));

        if (licence != null && (string)licence.Attribute("type") == "expression")
        {
            // Of licences to choose from, the first whose text is here is taken.
            var chosen = licence.Value.Split(new[] { " OR " }, StringSplitOptions.None).FirstOrDefault(identifier => File.Exists(TextOf(identifier)));
            if (chosen == null)
                Log.LogError("Notices: {0} {1} is under {2}; put the text into {3}.", id, version, licence.Value, LicenceTexts);
            else
                asked.Add(chosen);
            Add(text, "Licence", licence.Value + (chosen == null || chosen == licence.Value ? "" : "; used here under " + chosen));
        }
        else if (files.Count == 0)
        {
            Log.LogError("Notices: {0} {1} says no licence that can be read.", id, version);
        }

        foreach (var file in files.Distinct())
            text.Append("\n--- ").Append(Path.GetFileName(file)).Append("\n\n").Append(Plain(File.ReadAllText(file)));
    }

    private static bool IsNotice(string name)
    {
        var upper = name.ToUpperInvariant();
        return upper.StartsWith("LICENSE") || upper.StartsWith("LICENCE") || upper.StartsWith("NOTICE") || upper.StartsWith("THIRD-PARTY") || upper.StartsWith("THIRDPARTY");
    }

    private string TextOf(string identifier)
    {
        return Path.Combine(LicenceTexts, identifier.Trim('(', ')', ' ') + ".txt");
    }

    private static string Of(XElement about, string name)
    {
        return about.Elements().Where(element => element.Name.LocalName == name).Select(element => element.Value.Trim()).FirstOrDefault() ?? "";
    }

    private static void Add(StringBuilder text, string name, string value)
    {
        if (value.Length > 0)
            text.Append(name).Append(": ").Append(value.Replace("\r", "").Replace("\n", " ")).Append('\n');
    }

    private static string Plain(string text)
    {
        return text.Replace("\r\n", "\n").TrimEnd() + "\n";
    }
}
