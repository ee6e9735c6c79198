using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Reflection.Emit;

namespace Refinish.Tests.House;

/// <summary>
/// Which member of the compiled library uses which, from its instructions. What a static initializer reads is used by the field that it
/// fills, and what an iterator reads by the method that makes it.
/// </summary>
internal sealed class MemberUses
{
    private readonly Dictionary<int, HashSet<MemberInfo>> users = [];

    public MemberUses(Assembly library)
    {
        foreach (Type type in library.GetTypes())
        {
            foreach (IGrouping<MethodBase, (MethodBase By, OpCode Code, MemberInfo Member)> method in IlReferences.Members(type).GroupBy(item => item.By))
            {
                Add(library, type, method.Key, [.. method.Select(item => (item.Code, item.Member))]);
            }
        }
    }

    /// <summary>The call sites of what makes a source or a caution, each with the member that it is written in.</summary>
    public List<(MemberInfo By, MethodBase Factory)> Makings { get; } = [];

    /// <summary>The members that use one directly.</summary>
    public IEnumerable<MemberInfo> Of(MemberInfo member) => users.TryGetValue(member.MetadataToken, out HashSet<MemberInfo>? found) ? found : [];

    /// <summary>The public types in whose results it shows: from member to member that uses it, until one can be seen from outside.</summary>
    public IEnumerable<string> ShownBy(IReadOnlyList<MemberInfo> origins)
    {
        HashSet<string> types = [];
        Queue<MemberInfo> open = new(origins);
        HashSet<MemberInfo> seen = [.. origins];
        while (open.Count > 0)
        {
            MemberInfo member = open.Dequeue();
            Type type = Outermost(member.DeclaringType!);

            // The catalogue of cautions shows nothing by itself; who takes one out of it does. The list of all is only an order.
            bool isCatalogue = type == typeof(Cautions);
            if (type.IsPublic && !isCatalogue)
            {
                types.Add(type.Name);
            }

            if (isCatalogue ? member.Name == "get_All" : IsSeen(member))
            {
                continue;
            }

            foreach (MemberInfo user in Of(member).Where(seen.Add))
            {
                open.Enqueue(user);
            }
        }

        IEnumerable<Type> own = origins.Select(origin => Outermost(origin.DeclaringType!)).Where(type => type.IsPublic);
        return types.Count > 0 ? types.OrderBy(name => name, StringComparer.Ordinal) : own.Select(type => type.Name).Distinct();
    }

    /// <summary>Whether a member only runs while a static field is filled: an initializer, or a method that none but such call.</summary>
    public bool OnlyFillsStatics(MemberInfo member) => OnlyFillsStatics(member, []);

    private bool OnlyFillsStatics(MemberInfo member, HashSet<MemberInfo> above) => member is FieldInfo || !above.Add(member)
        || (!IsSeen(member) && Of(member).Any() && Of(member).All(user => OnlyFillsStatics(user, above)));

    private void Add(Assembly library, Type type, MethodBase method, List<(OpCode Code, MemberInfo Member)> items)
    {
        // A property that fills its field when it is first read is as good as an initializer.
        FieldInfo[] filled = [.. items.Where(item => IsFilling(type, item)).Select(item => (FieldInfo)item.Member)];
        int at = 0;
        foreach ((OpCode Code, MemberInfo Member) item in items)
        {
            MemberInfo by = !method.IsStatic || filled.Length == 0 ? Writer(type, method) : filled[Math.Min(at, filled.Length - 1)];
            if (IsFilling(type, item))
            {
                at++;
            }
            else if (item.Member.Module.Assembly == library && item.Member is MethodBase or FieldInfo)
            {
                Use(item.Member, by);
                if (by is FieldInfo && method is MethodInfo)
                {
                    Use(by, method);
                }

                if (item.Member is MethodBase made && IsMaking(made) && type != made.DeclaringType)
                {
                    Makings.Add((by, made));
                }
            }
        }
    }

    private void Use(MemberInfo member, MemberInfo by)
    {
        if (!users.TryGetValue(member.MetadataToken, out HashSet<MemberInfo>? found))
        {
            users[member.MetadataToken] = found = [];
        }

        found.Add(by);
    }

    private static bool IsFilling(Type type, (OpCode Code, MemberInfo Member) item) => item.Code == OpCodes.Stsfld && item.Member.DeclaringType == type;

    private static bool IsMaking(MethodBase called) => called.DeclaringType == typeof(Caution)
        ? called.IsConstructor
        : called.DeclaringType == typeof(Source) && called is MethodInfo { IsStatic: true, IsSpecialName: false } made && made.ReturnType == typeof(Source);

    private static MemberInfo Writer(Type type, MethodBase method) =>
        type.Name.Contains(">d__") && !method.IsConstructor ? type.GetConstructors()[0] : method;

    private static Type Outermost(Type type) => type.DeclaringType is Type outer ? Outermost(outer) : type;

    private static bool IsSeen(MemberInfo member)
    {
        for (Type? type = member.DeclaringType; type is not null; type = type.DeclaringType)
        {
            if (!(type.IsPublic || type.IsNestedPublic))
            {
                return false;
            }
        }

        return member is FieldInfo field
            ? field.IsPublic || field.IsFamily || field.IsFamilyOrAssembly
            : member is MethodBase { IsPublic: true } or MethodBase { IsFamily: true } or MethodBase { IsFamilyOrAssembly: true };
    }
}
