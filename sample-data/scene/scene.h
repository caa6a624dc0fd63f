// A heart made of formulas: where blood, muscle, fat, lung and bone are, exactly, and how bright each is.
// Everything here is in the scene's own frame, mm (x left, y back, z head before the pose is applied);
// `patientFromScene` places it in the patient.
//
// Left atrial pool = atrium, appendage (lobe 0 runs to the wanted tip) and veins, each joined to the atrium
// with a fillet; appendage and veins meet in a fold, the ridge. Cavities keep off the pool and off each other
// by a stated thickness of tissue (for the ventricle: the valve). Blood beats muscle, muscle beats fat, fat
// beats lung.
#pragma once

#include "core/geometry/points.h"
#include "sample-data/scene/solids.h"

#include <Eigen/Geometry>
#include <array>
#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace gauge::sample_case {

/// A vessel or chamber outside the left atrial pool.
struct Cavity {
    std::string name;
    std::variant<Tube, Ellipsoid> solid;
    double hu = 350.0;
    double wallMm = 2.0;
    double keepOffMm = 2.0; ///< tissue left between it and the pool, and the cavities listed before it
    /// Whether fat is kept around it (not for what lies in fat or lung as it is).
    bool inMediastinum = true;
};

/// Bone: a bright shell around a less bright marrow.
struct Bone {
    std::variant<Tube, Ellipsoid> solid;
    double shellMm = 1.5;
    double shellHu = 700.0;
    double marrowHu = 220.0;
};

struct TissueLevels {
    double atriumHu = 380.0;
    double muscleHu = 85.0;
    double fatHu = -90.0;
    double lungHu = -850.0;
    double softTissueHu = 50.0;
};

/// Which structure a place belongs to.
enum class Tissue { Lung, Fat, SoftTissue, Bone, Muscle, Pool, CavityBlood };

struct Scene {
    Eigen::Isometry3d patientFromScene = Eigen::Isometry3d::Identity();

    Ellipsoid atrium;
    std::vector<Tube> lobes; ///< of the appendage, at least one; lobe 0 leads to the wanted tip
    std::vector<Tube> veins; ///< vein 0 is the upper left one
    std::vector<Cavity> cavities;
    std::vector<Bone> bones;
    std::vector<Ellipsoid> fatBodies; ///< fat between the organs, besides that around the heart

    double junctionFilletMm = 2.0; ///< appendage and veins with the atrium
    double lobeFilletMm = 2.5;     ///< lobes with each other
    double ridgeFilletMm = 2.5;    ///< upper left vein with the appendage
    double wallMm = 2.0;           ///< of the left atrial pool
    double fatMm = 3.5;            ///< around the heart, before lung begins

    TissueLevels levels;
    /// Blood level along lobe 0 as a share of the atrium's, against s.
    SmoothTable appendageShare{1.0};
    double veinHu = 380.0;

    /// Chest wall, when the scene shows one: lung ends at `chestInner`, body ends at `chestOuter`.
    struct Chest {
        Ellipsoid inner, muscle, outer;
    };
    std::vector<Chest> chest; ///< none or one

    // The exact answers rest on these; see truth.h.
    /// Defining function of the left atrial pool; negative inside.
    double pool(const Eigen::Vector3d& x) const;
    /// Defining function of appendage lobes alone, before they are joined to the atrium.
    double appendage(const Eigen::Vector3d& x) const;
    Tissue tissueAt(const Eigen::Vector3d& x) const;
    /// Index into `cavities` of the one that holds `x`, or -1.
    int cavityAt(const Eigen::Vector3d& x) const;
    /// Brightness with edges as sharp as formulas are.
    double huAt(const Eigen::Vector3d& x) const;

    core::PatientPoint patientFrom(const Eigen::Vector3d& x) const { return {patientFromScene * x}; }
    core::PatientVector patientFromDirection(const Eigen::Vector3d& d) const {
        return {patientFromScene.linear() * d};
    }
    Eigen::Vector3d sceneFrom(const core::PatientPoint& p) const { return patientFromScene.inverse() * p.mm; }
};

/// The scene prepared for many evaluations over small regions: what is far from a region is left out of them.
class SceneSampler {
public:
    static constexpr int kMaxSolids = 32;
    using Mask = std::uint64_t;

    explicit SceneSampler(const Scene& scene);

    /// Defining functions of all solids at one place, and what follows from them.
    struct Sample {
        std::array<double, kMaxSolids> solid;
        double appendage, pool, vein;
        std::array<double, 16> cavity;
        double muscle, mediastinum, bone, marrow;
        double chestInner, chestMuscle, chestOuter;
    };

    Mask everything() const { return m_everything; }
    /// Evaluates the solids in `mask`; the others keep what `sample` holds.
    void evaluate(const Eigen::Vector3d& x, Mask mask, Sample& sample) const;
    /// Solids that can matter within `radiusMm` of where `sample` was taken.
    Mask relevant(const Sample& sample, Mask mask, double radiusMm) const;
    /// True when no boundary between unlike tissues lies within `radiusMm`.
    bool isUniform(const Sample& sample, double radiusMm) const;
    /// Which boundary is nearest, as a number for `boundary`, and its defining function.
    int nearestBoundary(const Sample& sample) const;
    double boundary(const Sample& sample, int index) const;
    /// True when the level inside is the same within `radiusMm`; false near and in what has a course of
    /// levels.
    bool levelIsConstant(const Sample& sample, double radiusMm) const;
    /// Brightness; edges are ramps of the given width across the boundary.
    double hu(const Eigen::Vector3d& x, const Sample& sample, double rampMm) const;

private:
    double poolHu(const Eigen::Vector3d& x, const Sample& sample) const;

    const Scene& m_scene;
    int m_firstLobe, m_firstVein, m_firstCavity, m_firstBone, m_firstFat, m_firstChest, m_count;
    Mask m_everything;
};

} // namespace gauge::sample_case
