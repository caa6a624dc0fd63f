// Keeps the values of drawings in the record: measures every drawing again when it, or the scale that the person gave to its
// picture, has changed, and takes the values away with their drawing. What a drawing lies on is told by finders: the session
// knows the CT, each page of pictures adds its own.
#pragma once

#include "app/document/case_document.h"
#include "core/record/drawing_values.h"

#include <QObject>
#include <QPointer>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace gauge::app {

class DrawingRecorder : public QObject {
    Q_OBJECT
public:
    /// The scale of what a drawing lies on, and where its values come from (author and time are filled in).
    struct Source {
        core::DrawingGround ground;
        core::Provenance provenance;
    };
    using Finder = std::function<std::optional<Source>(const core::Drawing&)>;

    explicit DrawingRecorder(CaseDocument& document);

    /// `find` answers nothing for drawings that are not its own, or while their picture is not loaded; it is asked until
    /// `owner` is destroyed.
    void addFinder(QObject* owner, Finder find);
    std::optional<Source> sourceOf(const core::Drawing& drawing) const;

    /// Measures what has become measurable; call it when a picture has been loaded.
    void refresh();

    /// Why a drawing has no values; nothing when it has, or its picture is not loaded.
    const core::Error* failureOf(const std::string& id) const;
    /// It is neither measured as it is now, nor known that it cannot be.
    bool waits(const std::string& id) const;

signals:
    /// Values or reasons have changed.
    void recorded();

private:
    void measure(const std::string& id, const core::Drawing& drawing);
    void dropValuesOfRemoved();

    struct Owned {
        QPointer<QObject> owner;
        Finder find;
    };
    CaseDocument& m_document;
    std::vector<Owned> m_finders;
    struct Failure {
        core::Error error;
        std::vector<core::InputRevision> inputs; ///< from which it was tried: not again before they change
    };
    std::map<std::string, Failure, std::less<>> m_failures;
    bool m_busy = false;
};

} // namespace gauge::app
