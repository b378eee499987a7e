namespace Plumbmark.Inspection.Press;

/// <summary>A refusal to plan, with what the person should know.</summary>
/// <param name="Reason">Which.</param>
/// <param name="What">What was found, in one sentence.</param>
/// <param name="Why">Why that ends it.</param>
/// <param name="Instead">What to do instead.</param>
public sealed record Refusal(RefusalReason Reason, string What, string Why, string Instead);
