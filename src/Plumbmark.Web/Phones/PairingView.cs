using Plumbmark.Web.Server;

namespace Plumbmark.Web.Phones;

/// <summary>The page that asks a stranger for the code.</summary>
/// <param name="Name">The name typed for the phone.</param>
/// <param name="Faults">What was wrong.</param>
public sealed record PairingView(string Name, FieldFaults Faults);
