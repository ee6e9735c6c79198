using System.Collections.Generic;

namespace Refinish.Pictures.Drafting;

/// <summary>The views of a fixture, further lengths that no view shows, and remarks.</summary>
internal sealed record Blueprint(IReadOnlyList<View> Views, IReadOnlyList<string> Further, IReadOnlyList<string> Remarks);
