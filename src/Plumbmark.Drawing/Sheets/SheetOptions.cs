namespace Plumbmark.Drawing.Sheets;

/// <summary>What is not in the car but on its sheet. Two sheets of the same car with the same options are the same bytes.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="Date">The day written on the sheet and in the file: no clock is read.</param>
/// <param name="Version">The program's version.</param>
/// <param name="Author">Who made it, when that person wants to be named; null otherwise.</param>
/// <param name="ShowsSerial">Whether the serial number is printed.</param>
public sealed record SheetOptions(Paper Paper, DateOnly Date, string Version, string? Author = null, bool ShowsSerial = true);
