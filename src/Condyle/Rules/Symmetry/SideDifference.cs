using Condyle.Model;

namespace Condyle.Rules;

/// <summary>In what a left and a right node differ, the left one said first, and where each is said.</summary>
internal sealed record SideDifference(string Message, PlaceId Left, PlaceId Right);
