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

    private static readonly Gen<(bool Guided, (int At, int Width, int Height)[] Sizes, int[] Presses)> Sessions = Gen.Select(
        Gen.Bool,
        Gen.Select(Gen.Int[0, 60], Gen.Int[20, 250], Gen.Int[5, 80]).Array[1, 4],
        Gen.Int[0, Known.Length - 1].Array[5, 60]);

    // So many are drawn one over the other before the whole is drawn anew, to see whether anything was left standing.
    private const int KeysToALook = 5;

    [Fact]
    public void No_keys_in_whatever_order_and_size_break_anything_and_no_change_is_lost()
    {
        var workshop = Desks.Quick with { When = (_, _, _) => [], Chance = (_, _, _) => null };
        Sessions.Sample(session =>
        {
            using var ui = new HeadlessUi(JobFile.Unnamed(Desks.SmallJob), workshop);
            if (session.Guided)
                ui.Desk.Guide(new LocalDateTime(2027, 5, 14, 16, 0));
            for (var press = 0; press < session.Presses.Length; press++)
            {
                foreach (var size in session.Sizes.Where(size => size.At == press))
                    ui.Resize(size.Width, size.Height);
                ui.Press(Known[session.Presses[press]]);
                var left = ui.Screen;
                if (press % KeysToALook == 0 && left != ui.DrawnAnew)
                    return false;
            }

            return EveryChangeGoesBackAndForth(ui.Desk);
        }, iter: 40, threads: 1);
    }

    // Whatever is open is left first; then every change is taken back, and made again.
    private static bool EveryChangeGoesBackAndForth(JobDesk desk)
    {
        for (var open = 0; open < 80 && desk is not { Asking: null, Picking: null, Typing: null, Page: null, Judged: null, Helping: false, Guiding: null }; open++)
        {
            if (desk.Asking?.Answers.Any(answer => answer.Letter == 't') == true && desk.Guiding is not null)
                desk.Answer('t');
            else
                desk.Do(Word.Back);
        }

        var last = desk.Text;
        var changes = 0;
        for (; changes < 200 && desk.Undoable is not null; changes++)
            desk.Do(Word.Undo);
        if (desk.Text != Desks.SmallJob)
            return false;

        for (; changes > 0; changes--)
            desk.Do(Word.Redo);
        return desk.Text == last;
    }
}
