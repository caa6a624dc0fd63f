// Where an attribute of one frame stands: in its own functional groups, in the shared ones, or in the data
// set itself.
#pragma once

#include "dicomio/scan/dataset.h"

#include <cstddef>

namespace gauge::dicomio {

class XrayScope {
public:
    /// @param frame  0-based.
    XrayScope(const Dataset& dataset, int frame) : m_dataset(dataset) {
        const auto& perFrame = dataset.items(tags::PerFrameFunctionalGroupsSequence);
        if (static_cast<std::size_t>(frame) < perFrame.size())
            m_own = &perFrame[static_cast<std::size_t>(frame)];
        m_shared = dataset.firstItem(tags::SharedFunctionalGroupsSequence);
    }

    /// The data set that holds `tag`, looked for in the functional group `group` first.
    const Dataset& holding(Tag group, Tag tag) const {
        for (const Dataset* groups : {m_own, m_shared}) {
            const Dataset* item = groups ? groups->firstItem(group) : nullptr;
            if (item && item->has(tag)) return *item;
        }
        return m_dataset;
    }

private:
    const Dataset& m_dataset;
    const Dataset* m_own = nullptr;
    const Dataset* m_shared = nullptr;
};

} // namespace gauge::dicomio
