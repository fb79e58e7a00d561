using System.Collections;
using System.Reflection;
using Condyle.Analyzers.Reading;
using Condyle.Model;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>What code can get at from a value: the handles in it, and the expressions that lead there.</summary>
internal sealed class HandlePaths(EventLog log, Side? side, string? sideExpression)
{
    private const int MostDeep = 4;

    private readonly List<(string Path, int Id)> found = [];
    private readonly List<(string Path, IReadOnlyList<int> Ids)> lists = [];

    /// <summary>Each expression with the element that it gives; what is found first leads there the shortest way.</summary>
    public IReadOnlyList<(string Path, int Id)> Found => found;

    /// <summary>Each expression that gives several elements in order.</summary>
    public IReadOnlyList<(string Path, IReadOnlyList<int> Ids)> Lists => lists;

    public void Walk(object? value, string path) => Walk(value, path, 0);

    private void Walk(object? value, string path, int depth)
    {
        if (depth > MostDeep)
            return;
        switch (value)
        {
            case IHandle handle:
                TakeHandle(handle, path);
                break;
            case ArrayValue array:
                WalkItems(array.Items, path, depth);
                break;
            case IEnumerable items when IsOurs(items.GetType()) || items.GetType().IsGenericType:
                WalkItems(items.Cast<object?>().ToList(), path, depth);
                break;
            case not null when IsOurs(value.GetType()) && !value.GetType().IsEnum && value is not Side:
                WalkParts(value, path, depth);
                break;
        }
    }

    private void TakeHandle(IHandle handle, string path)
    {
        if (!Handles.IsMade(handle))
            return;
        found.Add((path, handle.Id));
        if (handle is not Chain || log[handle.Id] is not ChainDeclared { Joints: { } joints })
            return;
        found.Add(($"{path}.{nameof(Chain.Root)}", joints[0]));
        found.Add(($"{path}.{nameof(Chain.Tip)}", joints[joints.Count - 1]));
        found.AddRange(joints.Select((joint, i) => ($"{path}[{i}]", joint)));
    }

    private void WalkItems(IReadOnlyList<object?> items, string path, int depth)
    {
        if (items.Count > 0 && items.All(item => item is IHandle handle && Handles.IsMade(handle)))
            lists.Add((path, [.. items.Select(item => ((IHandle)item!).Id)]));
        for (var i = 0; i < items.Count; i++)
        {
            Walk(items[i], $"{path}[{i}]", depth + 1);
            Walk(items[i], $"{path}[^{items.Count - i}]", depth + 1);
        }
    }

    private void WalkParts(object value, string path, int depth)
    {
        foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (property.GetIndexParameters() is [var only] && only.ParameterType == typeof(Side))
                WalkSides(value, property, path, depth);
            if (property.GetIndexParameters().Length > 0)
                continue;
            var part = $"{path}.{property.Name}";
            Walk(property.GetValue(value), Nullable.GetUnderlyingType(property.PropertyType) is null ? part : $"{part}.Value", depth + 1);
        }
    }

    private void WalkSides(object value, PropertyInfo indexer, string path, int depth)
    {
        if (side is not null && sideExpression is not null)
            Walk(indexer.GetValue(value, [side]), $"{path}[{sideExpression}]", depth + 1);
        Walk(indexer.GetValue(value, [Side.Left]), $"{path}[{nameof(Side)}.{nameof(Side.Left)}]", depth + 1);
        Walk(indexer.GetValue(value, [Side.Right]), $"{path}[{nameof(Side)}.{nameof(Side.Right)}]", depth + 1);
    }

    private static bool IsOurs(Type type) => type.GetTypeInfo().Assembly == typeof(RigDraft).GetTypeInfo().Assembly;
}
