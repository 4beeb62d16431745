using CoatPlan.App.Desk;
using CoatPlan.Tests.Commands;
using CoatPlan.Tests.Desk;
using Terminal.Gui.Input;

namespace CoatPlan.Tests.Screens;

/// <summary>What a person had answered or changed is there again after the program was killed.</summary>
public sealed class RecoveryTests : IDisposable
{
    private static readonly LocalDateTime Friday = new(2027, 5, 14, 16, 0);

    private readonly TempFolder folder = new();

    private readonly string path;

    public RecoveryTests() => path = folder.File("bay.job.yaml", Desks.SmallJob);

    [Fact]
    public void The_answers_of_the_guide_are_offered_again()
    {
        using (var killed = Start())
        {
            killed.Press(Key.Enter, Key.U.WithCtrl);
            killed.Type("Coupe bay");
            killed.Press(Key.Enter);
            killed.Desk.GuideAnswers.ShouldBe(2);
            killed.Desk.KeepSafe();
        }

        using var ui = Start();
        ui.Screen.ShouldContain("left unsaved the last time");
        ui.Type("t");

        ui.Desk.Guiding.ShouldBeNull();
        ui.Desk.Job.ShouldNotBeNull().Name.ShouldBe("Coupe bay");
        ui.Screen.ShouldContain("CoatPlan: Coupe bay (not saved)");
    }

    [Fact]
    public void A_guide_without_an_answer_leaves_nothing_behind()
    {
        using (var killed = Start())
            killed.Desk.KeepSafe();

        using var ui = Start();

        ui.Desk.Asking.ShouldBeNull();
        ui.Screen.ShouldContain("Whom is the job for?");
    }

    [Fact]
    public void Answers_that_are_not_wanted_are_asked_for_from_the_start()
    {
        using (var killed = Start())
        {
            killed.Press(Key.Enter);
            killed.Desk.KeepSafe();
        }

        using (var ui = Start())
        {
            ui.Type("d");
            ui.Screen.ShouldContain("Whom is the job for?");
        }

        Directory.GetFileSystemEntries(folder.Path).ShouldBe([path]);
    }

    [Fact]
    public void What_was_changed_is_kept_two_seconds_later_without_a_word()
    {
        using (var killed = new HeadlessUi(JobFile.Open(path), Desks.Quick))
        {
            killed.Desk.Type(SurfaceColumn.Area, "10 ft2").ShouldBeTrue();
            killed.Wait(TimeSpan.FromSeconds(1));
            Directory.GetFileSystemEntries(folder.Path).ShouldBe([path]);
            killed.Wait(TimeSpan.FromSeconds(1.1));
            killed.Desk.Type(SurfaceColumn.Area, "11 ft2").ShouldBeTrue();
            killed.Wait(TimeSpan.FromSeconds(2.1));
        }

        using var ui = new HeadlessUi(JobFile.Open(path), Desks.Quick);
        ui.Type("t");

        ui.Desk.Text.ShouldContain("11 ft2");
    }

    public void Dispose() => folder.Dispose();

    private HeadlessUi Start()
    {
        var ui = new HeadlessUi(JobFile.Open(path), Desks.Quick);
        ui.Desk.Guide(Friday);
        return ui;
    }
}
