using CoatPlan.App.Desk;
using CoatPlan.Sheets.Text;

namespace CoatPlan.App.Screens;

/// <summary>A question with its answers.</summary>
internal static class QuestionScreen
{
    /// <summary>Draws it.</summary>
    /// <param name="canvas">The place's own canvas.</param>
    /// <param name="question">The question.</param>
    public static void Draw(Canvas canvas, Question question)
    {
        var text = new Reader(canvas, 1, 2);
        text.Say(question.Asks, Ink.Strong);
        text.Skip();
        for (var at = 0; at < question.Answers.Length; at++)
        {
            var chosen = at == question.At;
            text.Item($"{(chosen ? ">" : " ")} {question.Answers[at].Letter}  ", question.Answers[at].Says, chosen ? Ink.ChosenCell : Ink.Plain);
        }
    }

    /// <summary>The answer at a row of the place; null where there is none.</summary>
    /// <param name="width">Columns of the place.</param>
    /// <param name="y">The row.</param>
    /// <param name="question">The question.</param>
    public static Answer? At(int width, int y, Question question)
    {
        var row = 2 + Wrapping.Lines(question.Asks, Math.Max(1, width - 2)).Count();
        foreach (var answer in question.Answers)
        {
            var rows = Wrapping.Hanging($"> {answer.Letter}  ", answer.Says, Math.Max(1, width - 2)).Count();
            if (y >= row && y < row + rows)
                return answer;
            row += rows;
        }

        return null;
    }
}
