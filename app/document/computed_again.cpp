#include "app/document/computed_again.h"

#include <memory>

namespace gauge::app {

bool sameButForAuthorAndTime(const core::RecordedValue& a, const core::RecordedValue& b) {
    core::Provenance provenance = *a.provenance;
    provenance.author = b.provenance->author;
    provenance.time = b.provenance->time;
    core::RecordedValue copy = a;
    copy.provenance = std::make_shared<const core::Provenance>(std::move(provenance));
    copy.unknown = b.unknown;
    return copy == b;
}

} // namespace gauge::app
