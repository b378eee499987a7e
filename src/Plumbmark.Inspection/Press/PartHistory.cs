namespace Plumbmark.Inspection.Press;

/// <summary>What was looked for on the bare metal and asked of its owner; null where nobody has answered yet.</summary>
/// <param name="Cracked">Any crack, anywhere.</param>
/// <param name="Kinked">A sharp crease or a dent at the bend.</param>
/// <param name="Torn">A torn edge or hole.</param>
/// <param name="Corroded">Rusted thin, pitted or flaking.</param>
/// <param name="Welded">Welded since it left its maker.</param>
/// <param name="Heated">Heated: blued, scaled, or known to have been.</param>
/// <param name="PressedBefore">Bent back once already.</param>
public sealed record PartHistory(
    Answer? Cracked = null,
    Answer? Kinked = null,
    Answer? Torn = null,
    Answer? Corroded = null,
    Answer? Welded = null,
    Answer? Heated = null,
    Answer? PressedBefore = null
);
