using CoatPlan.App.Desk;
using CoatPlan.App.Screens;
using CoatPlan.Tests.Desk;
using CsCheck;
using Terminal.Gui.Input;

namespace CoatPlan.Tests.Screens;

public sealed class RandomKeysTests
{
    private static readonly Key[] Known =
        [.. Keys.All.Where(row => row.Word is not (Word.Quit or Word.Save or Word.WriteSheets)).SelectMany(row => row.Pressed).Select(name => name.Key), .. "8 ft2xy".Select(letter => new Key(letter)), Key.Backspace];

    private static readonly Gen<(int Width, int Height, int[] Presses)> Sessions =
        Gen.Select(Gen.Int[20, 160], Gen.Int[5, 60], Gen.Int[0, Known.Length - 1].Array[5, 40]);

    [Fact]
    public void No_keys_in_whatever_order_and_size_break_anything_and_every_change_can_be_taken_back()
    {
        var workshop = Desks.Quick;
        Sessions.Sample(session =>
        {
            using var ui = new HeadlessUi(JobFile.Unnamed(Desks.SmallJob), workshop);
            for (var press = 0; press < session.Presses.Length; press++)
            {
                if (press == session.Presses.Length / 2)
                    ui.Resize(session.Width, session.Height);
                ui.Press(Known[session.Presses[press]]);
            }

            // Whatever was open is left first; then every change is taken back.
            ui.Desk.Do(Word.Back);
            ui.Desk.Do(Word.Back);
            ui.Desk.Do(Word.Back);
            for (var change = 0; change < session.Presses.Length && ui.Desk.Undoable is not null; change++)
                ui.Desk.Do(Word.Undo);
            return ui.Desk.Text == Desks.SmallJob;
        }, iter: 30, threads: 1);
    }
}
