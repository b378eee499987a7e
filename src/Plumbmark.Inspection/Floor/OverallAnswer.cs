using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>The verdict on the frame as a whole.</summary>
/// <param name="Verdict">True, out, or can't tell yet.</param>
/// <param name="Headline">The answer in one sentence of trade words.</param>
/// <param name="Why">The reasons, most important first, each one sentence of trade words.</param>
/// <param name="Floating">Points that no reading ties to the rest, each group with what would tie it.</param>
public sealed record OverallAnswer(Verdict Verdict, string Headline, IReadOnlyList<string> Why, IReadOnlyList<FloatingGroup> Floating)
{
    /// <summary>The reason given where nothing but left against right has been compared; a sheet tells it among what is not known.</summary>
    public static string AlikeOnBothSides => Texts.Say("floor.overall-answer.left-is-compared-with-right");
}
