using CoatPlan.Tests.Commands;

namespace CoatPlan.Tests.Packaging;

/// <summary>The target that reads the version from the tag, tried in a repository of its own.</summary>
public sealed class VersionFromTag
{
    [Fact]
    public void Without_a_repository_or_a_tag_it_is_the_prefix_on_a_tag_the_tag_and_behind_it_the_next_one_begun()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(folder.File("packaging"));
        File.Copy(Path.Combine(Repository.Root, "packaging", "Version.targets"), folder.File("packaging/Version.targets"));
        folder.File("a.proj", """
            <Project>
              <PropertyGroup><VersionPrefix>0.1.0</VersionPrefix><Version>0.1.0</Version></PropertyGroup>
              <Import Project="packaging/Version.targets" />
            </Project>
            """);

        Version(folder).ShouldBe("0.1.0");
        Git(folder, "init", "-q");
        Commit(folder);
        Version(folder).ShouldBe("0.1.0");
        Git(folder, "tag", "v1.2.3");
        Git(folder, "tag", "vase");
        Version(folder).ShouldBe("1.2.3");
        Commit(folder);
        Commit(folder);
        Version(folder).ShouldBe("1.2.4-dev.2");
        Version(folder, "-p:Version=7.8.9").ShouldBe("7.8.9");
    }

    private static void Commit(TempFolder folder) => Git(folder, "-c", "user.name=a", "-c", "user.email=a@b.example", "commit", "-q", "--allow-empty", "-m", "step");

    private static void Git(TempFolder folder, params string[] arguments) => OtherProgram.Run(folder.Path, "git", arguments);

    private static string Version(TempFolder folder, params string[] more) =>
        OtherProgram.Run(folder.Path, "dotnet", ["msbuild", "a.proj", "-nologo", "-t:ReadVersionFromTag", "-getProperty:Version", "-nodeReuse:false", .. more]).Trim();
}
