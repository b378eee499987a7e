using Plumbmark.Inspection.Bench;

namespace Plumbmark.Inspection.Press;

/// <summary>A crack test on bare metal. Nothing found means only that: nothing was found by this method.</summary>
/// <param name="Id">Its own name.</param>
/// <param name="Method">How it was done.</param>
/// <param name="Found">Whether a crack was found.</param>
/// <param name="AfterBite">The bite after which it was done; null for before the first.</param>
/// <param name="Note">Anything else; null when nothing.</param>
public sealed record CrackTest(string Id, CrackMethod Method, bool Found, string? AfterBite = null, string? Note = null);
