#include "core/volume/phase_set.h"

#include "core/parallel/cancelled.h"

#include <algorithm>
#include <condition_variable>
#include <cstdint>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

namespace gauge::core {
namespace {

std::size_t bytesOf(const LoadedPhase& loaded) {
    return loaded.volume->voxelCount() * sizeof(std::int16_t);
}

struct Slot {
    std::shared_ptr<const LoadedPhase> data; ///< null unless in memory
    bool loading = false;
    bool failed = false; ///< fetching in advance failed: not tried again until somebody asks
    int waiting = 0;     ///< threads that wait for the load to end
    std::uint64_t lastUse = 0;
};

using Lock = std::unique_lock<std::mutex>;

} // namespace

class PhaseSet::State {
public:
    State(std::vector<PhaseInfo> phases, PhaseProvider provider, const PhaseSetOptions& options)
        : m_phases(std::move(phases)), m_provider(std::move(provider)), m_options(options),
          m_slots(m_phases.size()) {
        if (options.neighbours > 0 && m_phases.size() > 1)
            m_fetcher = std::jthread([this](const std::stop_token& stop) { fetchInAdvance(stop); });
    }

    ~State() {
        m_fetcher.request_stop(); // no new fetch starts
        const std::lock_guard lock(m_mutex);
        m_fetchStop.request_stop(); // the one that runs ends; the thread is joined first of all members
    }

    const std::vector<PhaseInfo>& phases() const { return m_phases; }

    Result<std::shared_ptr<const LoadedPhase>> get(std::size_t phase, const WorkContext& work) {
        Lock lock(m_mutex);
        lookAt(phase);
        Slot& slot = m_slots[phase];
        for (;;) {
            if (work.stopped()) return cancelled("Loading the phase");
            if (slot.data) {
                slot.lastUse = ++m_clock;
                m_changed.notify_all();
                return slot.data;
            }
            if (!slot.loading) return load(phase, work, lock);
            ++slot.waiting;
            m_changed.wait(lock, work.stop, [&] { return !slot.loading; });
            --slot.waiting;
        }
    }

    std::shared_ptr<const LoadedPhase> held(std::size_t phase) const {
        const std::lock_guard lock(m_mutex);
        return phase < m_slots.size() ? m_slots[phase].data : nullptr;
    }

    std::size_t bytesHeld() const {
        const std::lock_guard lock(m_mutex);
        return m_held;
    }

    void waitUntilIdle(const WorkContext& work) const {
        Lock lock(m_mutex);
        m_changed.wait(lock, work.stop, [this] {
            return std::none_of(m_slots.begin(), m_slots.end(), [](const Slot& s) { return s.loading; }) &&
                   !toFetch();
        });
    }

private:
    /// The phase that somebody looks at now decides what is worth fetching.
    void lookAt(std::size_t phase) {
        m_current = phase;
        m_slots[phase].failed = false;
        m_slots[phase].lastUse = ++m_clock;
        m_wanted.clear();
        const std::size_t n = m_phases.size();
        for (int step = 1; step <= m_options.neighbours; ++step)
            for (const std::size_t side : {(phase + static_cast<std::size_t>(step)) % n,
                                           (phase + n - static_cast<std::size_t>(step) % n) % n})
                if (side != phase && !isWanted(side)) m_wanted.push_back(side);
        if (m_fetching && *m_fetching != phase && !isWanted(*m_fetching) && m_slots[*m_fetching].waiting == 0)
            m_fetchStop.request_stop();
    }

    bool isWanted(std::size_t phase) const {
        return std::find(m_wanted.begin(), m_wanted.end(), phase) != m_wanted.end();
    }

    /// Lets go of what has not been used for longest, apart from what `keeps` says, until `bytes` more fit.
    template <class Keeps> bool makeRoom(std::size_t bytes, Keeps keeps) {
        while (m_held + m_loading + bytes > m_options.budgetBytes) {
            Slot* oldest = nullptr;
            for (std::size_t i = 0; i < m_slots.size(); ++i)
                if (m_slots[i].data && !keeps(i) && (!oldest || m_slots[i].lastUse < oldest->lastUse))
                    oldest = &m_slots[i];
            if (!oldest) return false;
            m_held -= bytesOf(*oldest->data);
            oldest->data.reset();
        }
        return true;
    }

    /// Reads a phase with the lock given up meanwhile.
    Result<std::shared_ptr<const LoadedPhase>> load(std::size_t phase, const WorkContext& work, Lock& lock) {
        Slot& slot = m_slots[phase];
        const std::size_t expected = m_phases[phase].bytes;
        makeRoom(expected, [phase](std::size_t i) { return i == phase; });
        slot.loading = true;
        m_loading += expected;
        lock.unlock();
        auto loaded = m_provider(phase, work);
        lock.lock();
        m_loading -= expected;
        slot.loading = false;
        if (!loaded) {
            m_changed.notify_all();
            return tl::make_unexpected(std::move(loaded.error()));
        }
        auto data = std::make_shared<const LoadedPhase>(std::move(*loaded));
        const bool fits =
            makeRoom(bytesOf(*data), [&](std::size_t i) { return i == phase || i == m_current; });
        if (fits || phase == m_current) {
            slot.data = data;
            slot.lastUse = ++m_clock;
            m_held += bytesOf(*data);
        }
        m_changed.notify_all();
        return data;
    }

    bool fitsBesideWhatIsWanted(std::size_t phase) const {
        std::size_t kept = m_loading + m_phases[phase].bytes;
        for (std::size_t i = 0; i < m_slots.size(); ++i)
            if (m_slots[i].data && (i == m_current || isWanted(i))) kept += bytesOf(*m_slots[i].data);
        return kept <= m_options.budgetBytes;
    }

    /// The next phase worth fetching; nothing while somebody still waits for the one looked at.
    std::optional<std::size_t> toFetch() const {
        if (!m_current || !m_slots[*m_current].data) return std::nullopt;
        for (const std::size_t phase : m_wanted) {
            const Slot& slot = m_slots[phase];
            if (!slot.data && !slot.loading && !slot.failed && fitsBesideWhatIsWanted(phase)) return phase;
        }
        return std::nullopt;
    }

    void fetchInAdvance(const std::stop_token& stop) {
        Lock lock(m_mutex);
        while (m_changed.wait(lock, stop, [this] { return toFetch().has_value(); })) {
            if (stop.stop_requested()) return;
            const std::size_t phase = *toFetch();
            makeRoom(m_phases[phase].bytes, [this](std::size_t i) { return i == m_current || isWanted(i); });
            m_fetching = phase;
            m_fetchStop = std::stop_source();
            const auto loaded = load(phase, {m_fetchStop.get_token(), {}}, lock);
            m_fetching.reset();
            const bool givenUp = !loaded && loaded.error().code == ErrorCode::Cancelled;
            if (!givenUp && !m_slots[phase].data) m_slots[phase].failed = true;
            m_changed.notify_all();
        }
    }

    const std::vector<PhaseInfo> m_phases;
    const PhaseProvider m_provider;
    const PhaseSetOptions m_options;
    mutable std::mutex m_mutex;
    mutable std::condition_variable_any m_changed; ///< a load ended, or another phase is looked at
    std::vector<Slot> m_slots;
    std::size_t m_held = 0;    ///< bytes in memory
    std::size_t m_loading = 0; ///< bytes expected of what is being read
    std::uint64_t m_clock = 0; ///< counts uses
    std::optional<std::size_t> m_current;
    std::vector<std::size_t> m_wanted; ///< neighbours of m_current, nearest first
    std::optional<std::size_t> m_fetching;
    std::stop_source m_fetchStop;
    std::jthread m_fetcher; // last: joined before the rest is destroyed
};

PhaseSet::PhaseSet(std::unique_ptr<State> state) : m_state(std::move(state)) {}

PhaseSet::~PhaseSet() = default;

Result<std::unique_ptr<PhaseSet>> PhaseSet::make(std::vector<PhaseInfo> phases, PhaseProvider provider,
                                                 const PhaseSetOptions& options) {
    if (phases.empty() || !provider || options.neighbours < 0)
        return failure(
            ErrorCode::InvalidArgument,
            "Cannot make a set of phases: at least one phase and a way to read it are needed, and not a "
            "negative number of neighbours.");
    return std::unique_ptr<PhaseSet>(
        new PhaseSet(std::make_unique<State>(std::move(phases), std::move(provider), options)));
}

const std::vector<PhaseInfo>& PhaseSet::phases() const {
    return m_state->phases();
}

Result<std::shared_ptr<const LoadedPhase>> PhaseSet::get(std::size_t phase, const WorkContext& work) {
    if (phase >= phases().size())
        return failure(ErrorCode::InvalidArgument, "Phase number " + std::to_string(phase + 1) +
                                                       " does not exist; the series has " +
                                                       std::to_string(phases().size()) + ".");
    return m_state->get(phase, work);
}

std::shared_ptr<const LoadedPhase> PhaseSet::held(std::size_t phase) const {
    return m_state->held(phase);
}

std::size_t PhaseSet::bytesHeld() const {
    return m_state->bytesHeld();
}

void PhaseSet::waitUntilIdle(const WorkContext& work) const {
    m_state->waitUntilIdle(work);
}

} // namespace gauge::core
