// To which stage of the patient's course a series seems to belong, by the days on which the images were
// taken. Only ever proposed: a person confirms it.
#pragma once

#include "core/stage.h"
#include "dicomio/index/series_index.h"

#include <vector>

namespace gauge::dicomio {

/// Fills SeriesEntry::stage of CT, ultrasound and X-ray series, patient by patient.
///
/// The day of the procedure is the one day with fluoroscopy (XA, RF); of several such days the one with
/// ultrasound too; without fluoroscopy the one day with ultrasound. Series of earlier days are proposed as
/// BeforeProcedure, later ones as FollowUp. Echo and fluoroscopy of the day itself belong to the procedure,
/// but whether before or after a repair only a person knows; and of a CT of that day not even that is known.
/// Where no single day can be told, only a CT before all days with echo or fluoroscopy is proposed as
/// BeforeProcedure.
void proposeStages(std::vector<SeriesEntry>& series);

} // namespace gauge::dicomio
