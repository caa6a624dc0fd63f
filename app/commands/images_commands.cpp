#include "app/commands/images_commands.h"

#include "app/document/case_document.h"

namespace gauge::app {
namespace {

core::SetImages choosing(const CaseDocument& document, core::ImagesUsed images) {
    images.revision = document.nextRevision();
    return {std::move(images)};
}

} // namespace

ChooseImages::ChooseImages(CaseDocument& document, core::ImagesUsed images)
    : EditCommand(document, QStringLiteral("Choose the phase ") + QString::fromStdString(images.phaseLabel),
                  choosing(document, images)) {}

void setFirstImages(CaseDocument& document, core::ImagesUsed images) {
    document.apply(choosing(document, std::move(images)));
}

void setPatient(CaseDocument& document, core::Patient patient) {
    if (patient.name.empty() && patient.id.empty()) return;
    core::Entry<core::Patient> entry;
    entry.content = std::move(patient);
    entry.revision = document.nextRevision();
    document.apply(core::SetSingle<core::Patient>{std::move(entry)});
}

} // namespace gauge::app
