namespace Condyle.Analyzers.Reading;

/// <summary>A place that holds a value: an item of an array, a field, a local. <c>ref</c> and <c>out</c> hand such places on.</summary>
internal readonly record struct Cell(object?[] Items, int Index);
