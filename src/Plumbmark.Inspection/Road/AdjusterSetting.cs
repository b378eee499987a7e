namespace Plumbmark.Inspection.Road;

/// <summary>What one adjuster should be set to.</summary>
/// <param name="Adjuster">The adjuster.</param>
/// <param name="FromMetres">What it is now, from the drawn state.</param>
/// <param name="ToMetres">What it should be: a whole number of shims where shims have a step.</param>
/// <param name="IsAtItsEnd">Whether it ends at the least or the most it can be.</param>
/// <param name="IsUnusual">Whether it ends beyond what is usual: then a fault is absorbed, not mended.</param>
public sealed record AdjusterSetting(Adjuster Adjuster, double FromMetres, double ToMetres, bool IsAtItsEnd, bool IsUnusual);
