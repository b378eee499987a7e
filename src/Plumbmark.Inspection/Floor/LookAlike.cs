namespace Plumbmark.Inspection.Floor;

/// <summary>Something that looks like damage and is none, offered before damage is claimed.</summary>
/// <param name="Kind">not-level, centre-line, tape-scale, lean, point-or-drop, reading and so on.</param>
/// <param name="SizeMetres">How large it is; null when it has no single length.</param>
/// <param name="UMetres">Its standard uncertainty; null with the size.</param>
/// <param name="Sentence">What it is, what it would fool one into seeing, and how to tell.</param>
public sealed record LookAlike(string Kind, double? SizeMetres, double? UMetres, string Sentence);
