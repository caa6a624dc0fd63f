#include "core/volume/phase_set.h"

#include <atomic>
#include <chrono>
#include <gmock/gmock.h>
#include <random>
#include <thread>

using namespace gauge::core;
using namespace std::chrono_literals;
using testing::HasSubstr;

namespace {

constexpr std::size_t kPhaseBytes = 2000; // 10 x 10 x 10 voxels

std::vector<PhaseInfo> infos(std::size_t count) {
    std::vector<PhaseInfo> phases(count);
    for (std::size_t i = 0; i < count; ++i)
        phases[i] = {100.0 * static_cast<double>(i) / static_cast<double>(count),
                     {},
                     {},
                     std::to_string(i),
                     kPhaseBytes};
    return phases;
}

/// A reader that counts, and that finds out when it is called twice for one phase at once.
struct Reader {
    std::vector<std::atomic<int>> loads, running;
    std::atomic<bool> twiceAtOnce{false};
    std::atomic<bool> broken{false};
    std::atomic<std::chrono::milliseconds> duration{0ms};

    explicit Reader(std::size_t phases) : loads(phases), running(phases) {}

    Result<LoadedPhase> operator()(std::size_t phase, const WorkContext& work) {
        if (++running[phase] > 1) twiceAtOnce = true;
        const auto end = std::chrono::steady_clock::now() + duration.load();
        ++loads[phase];
        while (std::chrono::steady_clock::now() < end && !work.stopped())
            std::this_thread::sleep_for(1ms);
        --running[phase];
        if (work.stopped()) return failure(ErrorCode::Cancelled, "stopped");
        if (broken) return failure(ErrorCode::FileDamaged, "the disc is scratched");
        auto volume =
            Volume::make({10, 10, 10}, std::vector<std::int16_t>(1000, static_cast<std::int16_t>(phase)),
                         Eigen::Affine3d::Identity(), VoxelQuantity::HounsfieldUnits, "");
        return LoadedPhase{*volume, {}, {}};
    }
    int count(std::size_t phase) const { return loads[phase]; }
};

std::unique_ptr<PhaseSet> makeSet(Reader& reader, std::size_t phasesInMemory, int neighbours = 1) {
    auto set =
        PhaseSet::make(infos(reader.loads.size()),
                       [&reader](std::size_t phase, const WorkContext& work) { return reader(phase, work); },
                       {phasesInMemory * kPhaseBytes, neighbours});
    return std::move(*set);
}

int valueOf(const Result<std::shared_ptr<const LoadedPhase>>& phase) {
    return phase ? (*phase)->volume->at(0, 0, 0) : -1;
}

} // namespace

TEST(PhaseSet, HandsOutThePhaseAndKeepsIt) {
    Reader reader(5);
    const auto set = makeSet(reader, 10, 0);
    EXPECT_EQ(set->held(3), nullptr);
    const auto first = set->get(3);
    EXPECT_EQ(valueOf(first), 3);
    EXPECT_EQ(set->held(3), *first);
    EXPECT_EQ(set->get(3).value(), *first);
    EXPECT_EQ(reader.count(3), 1);
    EXPECT_EQ(set->bytesHeld(), kPhaseBytes);
}

TEST(PhaseSet, FetchesTheNeighboursAroundTheBeat) {
    Reader reader(6);
    const auto set = makeSet(reader, 10);
    EXPECT_EQ(valueOf(set->get(0)), 0);
    set->waitUntilIdle();
    EXPECT_NE(set->held(1), nullptr);
    EXPECT_NE(set->held(5), nullptr);
    EXPECT_EQ(set->held(2), nullptr);
    EXPECT_EQ(valueOf(set->get(1)), 1); // was there
    set->waitUntilIdle();
    EXPECT_EQ(reader.count(1), 1);
    EXPECT_NE(set->held(2), nullptr);
}

TEST(PhaseSet, LetsGoOfWhatWasNotUsedForLongest) {
    Reader reader(6);
    const auto set = makeSet(reader, 3, 0);
    for (const std::size_t phase : {0u, 1u, 2u, 0u, 3u}) // 1 is now the one not used for longest
        EXPECT_TRUE(set->get(phase));
    EXPECT_EQ(set->held(1), nullptr);
    for (const std::size_t phase : {0u, 2u, 3u})
        EXPECT_NE(set->held(phase), nullptr) << phase;
    EXPECT_EQ(set->bytesHeld(), 3 * kPhaseBytes);
}

TEST(PhaseSet, StaysWithinItsBudgetAndAllowsOnePhaseAlways) {
    Reader reader(8);
    const auto tight = makeSet(reader, 2);
    for (std::size_t phase = 0; phase < 8; ++phase) {
        EXPECT_EQ(valueOf(tight->get(phase)), static_cast<int>(phase));
        tight->waitUntilIdle();
        EXPECT_LE(tight->bytesHeld(), 2 * kPhaseBytes);
        EXPECT_NE(tight->held(phase), nullptr); // never dropped for a neighbour
    }
    const auto tiny = makeSet(reader, 0);
    EXPECT_EQ(valueOf(tiny->get(4)), 4);
    EXPECT_EQ(tiny->bytesHeld(), kPhaseBytes);
    EXPECT_EQ(valueOf(tiny->get(5)), 5);
    EXPECT_EQ(tiny->held(4), nullptr);
}

TEST(PhaseSet, KeepsAPhaseAliveForWhoeverHoldsIt) {
    Reader reader(4);
    const auto set = makeSet(reader, 1, 0);
    const auto mine = set->get(0).value();
    EXPECT_TRUE(set->get(1));
    EXPECT_EQ(set->held(0), nullptr);
    EXPECT_EQ(mine->volume->at(1, 1, 1), 0);
}

TEST(PhaseSet, NeverReadsAPhaseTwiceAtOnce) {
    Reader reader(4);
    reader.duration = 20ms;
    const auto set = makeSet(reader, 10);
    std::vector<std::jthread> threads;
    std::atomic<int> wrong{0};
    for (int t = 0; t < 6; ++t)
        threads.emplace_back([&] { wrong += valueOf(set->get(2)) != 2; });
    threads.clear();
    EXPECT_EQ(wrong, 0);
    EXPECT_EQ(reader.count(2), 1);
    EXPECT_FALSE(reader.twiceAtOnce);
}

TEST(PhaseSet, HoldsUnderManyThreads) {
    constexpr int kSteps = 150;
    Reader reader(7);
    const auto set = makeSet(reader, 3);
    std::atomic<int> wrong{0};
    std::vector<std::jthread> threads;
    for (unsigned t = 0; t < 4; ++t)
        threads.emplace_back([&, t] {
            std::mt19937 random(t); // seed = number of the thread
            for (int step = 0; step < kSteps; ++step) {
                const std::size_t phase = random() % 7;
                std::stop_source stop;
                if (random() % 5 == 0) stop.request_stop();
                const auto got = set->get(phase, {stop.get_token(), {}});
                if (got ? valueOf(got) != static_cast<int>(phase) : got.error().code != ErrorCode::Cancelled)
                    ++wrong;
            }
        });
    threads.clear();
    EXPECT_EQ(wrong, 0);
    EXPECT_FALSE(reader.twiceAtOnce);
    set->waitUntilIdle();
    EXPECT_LE(set->bytesHeld(), 3 * kPhaseBytes);
}

TEST(PhaseSet, AnswersAStopWhileAnotherThreadReads) {
    // progress.h promises 100 ms; a busy machine gets more, still far from the whole read.
    constexpr auto kAnswer = 3s;
    Reader reader(3);
    reader.duration = 20s;
    const auto set = makeSet(reader, 10, 0);
    std::stop_source reading, waiting;
    std::jthread first([&] { set->get(1, {reading.get_token(), {}}); });
    while (reader.count(1) == 0)
        std::this_thread::sleep_for(1ms);
    std::chrono::steady_clock::time_point asked;
    std::jthread stopper([&] {
        std::this_thread::sleep_for(20ms);
        asked = std::chrono::steady_clock::now();
        waiting.request_stop();
    });
    const auto got = set->get(1, {waiting.get_token(), {}});
    const auto answered = std::chrono::steady_clock::now();
    stopper.join();
    EXPECT_EQ(got.error().code, ErrorCode::Cancelled);
    EXPECT_LT(answered - asked, kAnswer);
    reading.request_stop();
}

TEST(PhaseSet, ReadsItselfWhenTheThreadItWaitedForWasStopped) {
    Reader reader(3);
    reader.duration = 50ms;
    const auto set = makeSet(reader, 10, 0);
    std::stop_source stop;
    std::jthread first([&] {
        EXPECT_EQ(set->get(1, {stop.get_token(), {}}).error().code, ErrorCode::Cancelled);
    });
    while (reader.count(1) == 0)
        std::this_thread::sleep_for(1ms);
    std::jthread second([&] { EXPECT_EQ(valueOf(set->get(1)), 1); });
    std::this_thread::sleep_for(5ms);
    stop.request_stop();
    first.join();
    second.join();
    EXPECT_EQ(reader.count(1), 2);
    EXPECT_FALSE(reader.twiceAtOnce);
}

TEST(PhaseSet, GivesUpFetchingWhenAnotherPlaceIsLookedAt) {
    Reader reader(9);
    const auto set = makeSet(reader, 20);
    EXPECT_TRUE(set->get(0));
    set->waitUntilIdle();
    reader.duration = 10s;    // fetching would take this long
    EXPECT_TRUE(set->get(1)); // held; now 2 is being fetched
    while (reader.count(2) == 0)
        std::this_thread::sleep_for(1ms);
    reader.duration = 0ms;
    EXPECT_EQ(valueOf(set->get(5)), 5);
    set->waitUntilIdle(); // would take ten seconds if the fetch of 2 went on
    EXPECT_EQ(set->held(2), nullptr);
    EXPECT_NE(set->held(4), nullptr);
    EXPECT_NE(set->held(6), nullptr);
}

TEST(PhaseSet, EndsAtOnceWhileItFetches) {
    Reader reader(4);
    auto set = makeSet(reader, 10);
    EXPECT_TRUE(set->get(0));
    set->waitUntilIdle();
    reader.duration = 10s;
    EXPECT_TRUE(set->get(1));
    while (reader.count(2) == 0)
        std::this_thread::sleep_for(1ms);
    set.reset(); // hangs for ten seconds unless the fetch is stopped
    EXPECT_EQ(reader.running[2], 0);
}

TEST(PhaseSet, PassesOnAFailureAndTriesAgainWhenAsked) {
    Reader reader(4);
    reader.broken = true;
    const auto set = makeSet(reader, 10);
    const auto failed = set->get(2);
    EXPECT_EQ(failed.error().code, ErrorCode::FileDamaged);
    EXPECT_EQ(failed.error().message, "the disc is scratched");
    EXPECT_EQ(reader.count(1), 0); // no neighbours of what is not there
    reader.broken = false;
    EXPECT_EQ(valueOf(set->get(2)), 2);
    set->waitUntilIdle();
    reader.broken = true;
    EXPECT_TRUE(set->get(3)); // fetched; its neighbour 0 fails in advance, once
    set->waitUntilIdle();
    EXPECT_EQ(reader.count(0), 1);
    EXPECT_EQ(set->get(0).error().code, ErrorCode::FileDamaged);
}

TEST(PhaseSet, RefusesWhatItCannotDo) {
    const PhaseProvider none;
    const auto empty = PhaseSet::make({}, none);
    EXPECT_EQ(empty.error().code, ErrorCode::InvalidArgument);
    EXPECT_THAT(empty.error().message, HasSubstr("at least one phase and a way to read it are needed"));
    Reader reader(2);
    const auto set = makeSet(reader, 1, 0);
    EXPECT_THAT(set->get(2).error().message, HasSubstr("Phase number 3 does not exist; the series has 2."));
}
