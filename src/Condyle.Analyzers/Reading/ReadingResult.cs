using Condyle.Model;
using Condyle.Rules;

namespace Condyle.Analyzers.Reading;

/// <summary>What one path through a definition found: the model, where its parts came from, and what the rules say of it.</summary>
internal sealed record ReadPath(RigModel Model, PlaceTable Places, CallRecords Calls, IReadOnlyList<Finding> Findings);

/// <summary>What a reading of a definition, or of a helper on its own, found.</summary>
/// <param name="Name">The definition's or helper's name.</param>
/// <param name="Paths">One for each way through it that unknown values open.</param>
/// <param name="Files">The files whose code it ran.</param>
/// <param name="Methods">The ids of the methods that it ran.</param>
internal sealed record ReadingResult(string Name, IReadOnlyList<ReadPath> Paths, IReadOnlyCollection<string> Files, IReadOnlyCollection<string> Methods);
