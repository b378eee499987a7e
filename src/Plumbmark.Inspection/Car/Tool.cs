using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Inspection.Car;

/// <summary>What a reading was taken with. It says how sure a reading can be; it is not the reading.</summary>
/// <param name="Id">Its name in the file.</param>
/// <param name="Kind">What sort of tool it is.</param>
/// <param name="Class">A tape's accuracy class after the European directive (I, II or III); null when not marked.</param>
/// <param name="Division">The smallest division that is read; null when not told.</param>
/// <param name="Sigma">Standard uncertainty of one reading with it, when its owner knows better than the class says; null otherwise.</param>
public sealed record Tool(string Id, ToolKind Kind, TapeClass? Class = null, Length? Division = null, Length? Sigma = null);
