using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Road;

/// <summary>The page on which something measured is taken back.</summary>
/// <param name="Car">The car.</param>
/// <param name="Title">What is taken back.</param>
/// <param name="Line">It in one line, as typed.</param>
/// <param name="Action">Where the form goes.</param>
/// <param name="Home">Where to go to leave it.</param>
/// <param name="Reason">What stands in the form.</param>
/// <param name="Faults">What is wrong.</param>
public sealed record TakeBackView(OpenCar Car, string Title, string Line, string Action, string Home, string Reason, FieldFaults Faults);
