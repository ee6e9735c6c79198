using System;

namespace Refinish.Pictures.Drawing;

/// <summary>One person's day on the premises.</summary>
internal sealed record TimelineVisit(string Person, DateTimeOffset Arrives, DateTimeOffset Leaves, TimeSpan Waiting);
