namespace Refinish.Scheduling;

/// <summary>Something that steps share: how much of it there is, and how much each step needs.</summary>
internal readonly struct SharedMean(int capacity, int[] need)
{
    public int Capacity { get; } = capacity;

    public int[] Need { get; } = need;

    /// <summary>The steps that need any of it.</summary>
    public int[] Users()
    {
        int[] users = new int[Need.Length];
        int count = 0;
        for (int i = 0; i < Need.Length; i++)
        {
            if (Need[i] > 0)
            {
                users[count++] = i;
            }
        }

        System.Array.Resize(ref users, count);
        return users;
    }
}
