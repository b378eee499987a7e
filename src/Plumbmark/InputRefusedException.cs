namespace Plumbmark;

/// <summary>The world did not give what a verb needs (no such file, no right to read it); told once, at the edge, in one sentence.</summary>
internal sealed class InputRefusedException(string sentence) : Exception(sentence);
