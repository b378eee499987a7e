namespace Plumbmark.Engine.Adjustment;

/// <summary>What the readings say about a tool's shared zero and scale, prior included.</summary>
/// <param name="Id">The tool's name.</param>
/// <param name="ZeroMetres">Zero error: what the tool shows for no length.</param>
/// <param name="ZeroSigmaMetres">Its standard uncertainty; zero when it was taken as known.</param>
/// <param name="Scale">Relative scale error: reading = (1 + scale) · length + zero.</param>
/// <param name="ScaleSigma">Its standard uncertainty; zero when it was taken as known.</param>
public sealed record ToolEstimate(string Id, double ZeroMetres, double ZeroSigmaMetres, double Scale, double ScaleSigma);
