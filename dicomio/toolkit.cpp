#include "dicomio/toolkit.h"

#include <dcmtk/config/osconfig.h>

#include <dcmtk/dcmdata/dcrledrg.h>
#include <dcmtk/dcmjpeg/djdecode.h>
#include <dcmtk/dcmjpls/djdecode.h>
#include <dcmtk/oflog/oflog.h>
#include <mutex>

namespace gauge::dicomio {

void initialiseToolkit() {
    static std::once_flag once;
    std::call_once(once, [] {
        OFLog::configure(OFLogger::OFF_LOG_LEVEL);
        DcmRLEDecoderRegistration::registerCodecs();
        // Colours stay as they are coded: dicomio/pixel/colour converts them itself.
        DJDecoderRegistration::registerCodecs(EDC_never);
        DJLSDecoderRegistration::registerCodecs();
    });
}

} // namespace gauge::dicomio
