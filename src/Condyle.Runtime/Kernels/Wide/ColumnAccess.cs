using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Takes the values of all rigs out of a column and puts them there; constants are the same for all.</summary>
internal static class ColumnAccess
{
    extension(Numbers column)
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Lane Wide(int index) => Rigs.Load(ref column.First(index));

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Set(int index, Lane value) => Rigs.Store(value, ref column.First(index));
    }

    extension(Vectors column)
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideVector Wide(int index) => Load(ref column.First(index), 0);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Set(int index, in WideVector value) => Store(value, ref column.First(index), 0);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideVector Constant(int index) => Same(ref column.First(index), 0);
    }

    extension(Rotations column)
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideTurn Wide(int index)
        {
            ref var first = ref column.First(index);
            return new(Rigs.Load(ref first), Load1(ref first, 1), Load1(ref first, 2), Load1(ref first, 3));
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Set(int index, in WideTurn value)
        {
            ref var first = ref column.First(index);
            Rigs.Store(value.X, ref first);
            Store1(value.Y, ref first, 1);
            Store1(value.Z, ref first, 2);
            Store1(value.W, ref first, 3);
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideTurn Constant(int index)
        {
            ref var first = ref column.First(index);
            return new(Lanes.Create(first), Lanes.Create(Unsafe.Add(ref first, 1)), Lanes.Create(Unsafe.Add(ref first, 2)), Lanes.Create(Unsafe.Add(ref first, 3)));
        }
    }

    extension(Affines column)
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideAffine Wide(int index)
        {
            ref var first = ref column.First(index);
            return new(Load(ref first, 0), Load(ref first, 3), Load(ref first, 6), Load(ref first, 9));
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideVector Origin(int index) => Load(ref column.First(index), 9);

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Set(int index, in WideAffine value)
        {
            ref var first = ref column.First(index);
            Store(value.X, ref first, 0);
            Store(value.Y, ref first, 3);
            Store(value.Z, ref first, 6);
            Store(value.Origin, ref first, 9);
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideAffine Constant(int index)
        {
            ref var first = ref column.First(index);
            return new(Same(ref first, 0), Same(ref first, 3), Same(ref first, 6), Same(ref first, 9));
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public WideVector ConstantOrigin(int index) => Same(ref column.First(index), 9);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane Load1(ref float first, int component) => Rigs.Load(ref Unsafe.Add(ref first, component * Rigs.Width));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Store1(Lane value, ref float first, int component) => Rigs.Store(value, ref Unsafe.Add(ref first, component * Rigs.Width));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static WideVector Load(ref float first, int component) => new(Load1(ref first, component), Load1(ref first, component + 1), Load1(ref first, component + 2));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Store(in WideVector value, ref float first, int component)
    {
        Store1(value.X, ref first, component);
        Store1(value.Y, ref first, component + 1);
        Store1(value.Z, ref first, component + 2);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static WideVector Same(ref float first, int component) =>
        new(Lanes.Create(Unsafe.Add(ref first, component)), Lanes.Create(Unsafe.Add(ref first, component + 1)), Lanes.Create(Unsafe.Add(ref first, component + 2)));
}
