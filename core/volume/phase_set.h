// The phases of a gated series as one object. Volumes of several hundred megabytes each do not all fit into
// memory: the phase that is looked at is there, its neighbours in the beat are fetched while nobody waits,
// and the ones not seen for longest are let go. Choosing a phase: phase_choice.h.
#pragma once

#include "core/parallel/progress.h"
#include "core/result.h"
#include "core/volume/phase_choice.h"
#include "core/volume/volume.h"

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace gauge::core {

/// One phase in memory, with what the person should know of it.
struct LoadedPhase {
    std::shared_ptr<const Volume> volume;     ///< never null
    std::vector<std::string> sopInstanceUids; ///< slice k of the volume came from entry k
    std::vector<Notice> notices;
};

/// Reads one phase. Called from several threads at once, for different phases; answers a stop within 100 ms.
using PhaseProvider = std::function<Result<LoadedPhase>(std::size_t phase, const WorkContext& work)>;

struct PhaseSetOptions {
    /// Voxels kept and being read, at most; one phase is always allowed. More lets more phases be at hand. Of a gated CT of
    /// 512 x 512 x 250 voxels this holds the phase looked at, its neighbours, and the one that is being read.
    std::size_t budgetBytes = std::size_t{500} << 20;
    /// Phases fetched in advance on each side of the one looked at; 0 fetches none.
    int neighbours = 1;
};

/// Safe to use from any number of threads. Never reads the same phase twice at the same time. Whoever holds a
/// phase keeps its memory, whatever the set lets go.
class PhaseSet {
public:
    /// @param phases  in the order of the beat: neighbours follow each other, the first follows the last.
    /// @errors InvalidArgument when there are no phases, no provider, or `neighbours` is negative.
    static Result<std::unique_ptr<PhaseSet>> make(std::vector<PhaseInfo> phases, PhaseProvider provider,
                                                  const PhaseSetOptions& options = {});
    /// Stops what is being fetched in advance and waits for it. No other call may still run.
    ~PhaseSet();
    PhaseSet(const PhaseSet&) = delete;
    PhaseSet& operator=(const PhaseSet&) = delete;

    const std::vector<PhaseInfo>& phases() const;

    /// The phase to look at: from memory, or read now (on the calling thread and core/parallel). What is
    /// being fetched in advance for another place in the beat is given up first. A load that failed is tried
    /// again.
    /// @errors InvalidArgument beyond the list; Cancelled within 100 ms of a stop; those of the provider.
    Result<std::shared_ptr<const LoadedPhase>> get(std::size_t phase, const WorkContext& work = {});

    /// The phase if it is in memory, otherwise null. Starts nothing.
    std::shared_ptr<const LoadedPhase> held(std::size_t phase) const;

    /// Voxels that the set holds now, without those being read.
    std::size_t bytesHeld() const;

    /// Returns when nothing more is to be fetched in advance, or on a stop.
    void waitUntilIdle(const WorkContext& work = {}) const;

private:
    class State;
    explicit PhaseSet(std::unique_ptr<State> state);
    std::unique_ptr<State> m_state;
};

} // namespace gauge::core
