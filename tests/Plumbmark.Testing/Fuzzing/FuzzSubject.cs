namespace Plumbmark.Testing.Fuzzing;

/// <summary>A parser to be tried with broken input.</summary>
/// <param name="Name">What it reads.</param>
/// <param name="Good">Good examples to start from.</param>
/// <param name="Words">Pieces that mean something to it.</param>
/// <param name="Try">
/// Reads an input: whether it was accepted, and what is wrong with the answer (a sentence that is none, something accepted that cannot be written and read again);
/// null when nothing is.
/// </param>
public sealed record FuzzSubject(
    string Name,
    IReadOnlyList<byte[]> Good,
    IReadOnlyList<string> Words,
    Func<byte[], (bool Accepted, string? Wrong)> Try
);
