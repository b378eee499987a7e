namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>A column of a table.</summary>
/// <param name="Head">What stands above it, with the unit where it has one.</param>
/// <param name="Share">Its width compared with the others'.</param>
/// <param name="IsRight">Whether its text stands at its right edge.</param>
internal sealed record TableColumn(string Head, double Share, bool IsRight = false);
