namespace Plumbmark.Inspection.Floor.Levelling;

/// <summary>How to level the frame: which stand to raise and by how much, what the fourth stand says, what to beware of.</summary>
/// <param name="Stands">The three stands that the frame is levelled on, each with what to put under it.</param>
/// <param name="Fourth">The stand left alone, with how far the frame is from level over it: the twist; null with only three stands.</param>
/// <param name="IsLevel">Whether nothing thicker than the level can tell has to go under any of the three.</param>
/// <param name="Sentences">What to do and why, in order.</param>
/// <param name="Warnings">What to beware of.</param>
public sealed record LevellingAnswer(
    IReadOnlyList<StandAdvice> Stands,
    StandAdvice? Fourth,
    bool IsLevel,
    IReadOnlyList<string> Sentences,
    IReadOnlyList<string> Warnings
);

/// <summary>One stand.</summary>
/// <param name="Id">The stand.</param>
/// <param name="RaiseMetres">Shim thickness to put under it; for the fourth stand how much too high (negative: too low) the frame is over it.</param>
/// <param name="Sentence">The same in words.</param>
public sealed record StandAdvice(string Id, double RaiseMetres, string Sentence);
